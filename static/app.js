// In which order the scripts of a page start. What the cards say is decided elsewhere; scripts do what only a browser can.

// A frame on, the answer is on the screen: whatever starts here no longer stands in its way.
function afterPaint() {
  // a page in a hidden tab gets no frames, and starts all the same
  if (document.hidden) begin();
  else requestAnimationFrame(() => setTimeout(begin));
}

function begin() {
  start().catch(fault => {
    if (document.documentElement.hidden) document.body.textContent = 'The scripts of this page did not come. Open it again.';
    document.documentElement.hidden = false;
    throw fault;
  });
}

// No module is asked for before, or it would share a slow line with the answer.
async function start() {
  const [{ fetchRest, loadHtmx }, { keepWorker }] = await Promise.all([import('/static/answers.js'), import('/static/copy.js')]);
  keepWorker();
  await fetchRest();
  import('/static/units.js').catch(() => {});
  loadHtmx();
  loadHand();
  import('/static/memory.js');
  import(document.getElementById('job') ? '/static/job.js' : '/static/jobs.js');
}

// What a hand needs at arm's length; the page says when it listens.
async function loadHand() {
  await Promise.all([import('/static/pad.js'), import('/static/large.js')]);
  document.documentElement.dataset.hand = '';
}

// a page from a static host is not shown until a worker that can read its address answers it
if (location.search && document.querySelector('meta[name="shopcalc-static"]')) document.documentElement.hidden = true;
if (document.readyState === 'complete') afterPaint();
else addEventListener('load', afterPaint);
