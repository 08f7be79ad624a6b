// A second tap where the first one has made way for something else was not meant for that.
const AT_ONCE = 400, FINGER = 24;
let first = null;

// What this click fell on goes away: whatever comes to lie there is left alone for a moment.
export function endsHere({ timeStamp, clientX, clientY, detail }) {
  // keys press at no place
  if (detail) first = { timeStamp, clientX, clientY };
}

function leaveAlone(event) {
  const { timeStamp, clientX, clientY, detail } = event;
  if (!first || !detail || timeStamp - first.timeStamp > AT_ONCE || Math.hypot(clientX - first.clientX, clientY - first.clientY) > FINGER) return;
  event.preventDefault();
  event.stopImmediatePropagation();
}

// the focus goes with the mouse button, which a tap has too
for (const kind of ['mousedown', 'click']) document.addEventListener(kind, leaveAlone, true);
