"""Parts laid on boards, and what to buy for a whole job."""
