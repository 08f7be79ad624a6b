// In which order the scripts of a page start. What the cards say is decided elsewhere; scripts do what only a browser can.

// Once the answer is on the screen, whatever starts here no longer stands in its way.
function afterPaint() {
  // what nobody sees is never painted, and starts all the same
  if (document.hidden || document.documentElement.hidden) return begin();
  new PerformanceObserver(entries => entries.getEntriesByName('first-contentful-paint').length && begin()).observe({ type: 'paint', buffered: true });
  // some browsers never say that they have painted
  setTimeout(begin, 3000);
}

let hasBegun = false;

function begin() {
  if (hasBegun) return;
  hasBegun = true;
  start().catch(fault => {
    if (document.documentElement.hidden) document.body.textContent = 'The scripts of this page did not come. Open it again.';
    document.documentElement.hidden = false;
    throw fault;
  });
}

// No module is asked for before, or it would share a slow line with the answer.
async function start() {
  const [{ fetchRest, loadHtmx }, { keepWorker }] = await Promise.all([import('/static/answers.js'), import('/static/copy.js')]);
  // a page that only its worker can answer waits for nothing else
  const waits = document.documentElement.hidden;
  if (waits) keepWorker();
  await fetchRest();
  import('/static/units.js').catch(() => {});
  if (document.querySelector('[hx-get]')) loadHtmx();
  const others = [loadHand(), import('/static/memory.js'), import(document.getElementById('job') ? '/static/job.js' : '/static/item.js')];
  // the copy for no signal can wait until the hand is served, and a script that does not come does not hold it up
  await Promise.allSettled(others);
  if (!waits) keepWorker();
}

// What a hand needs at arm's length; the page says when it listens.
async function loadHand() {
  await Promise.all([import('/static/pad.js'), import('/static/large.js')]);
  document.documentElement.dataset.hand = '';
}

// Whose item a card is stands behind the #, where the ways about the card put something else.
const { hash } = location;
if (hash.startsWith('#item=')) addEventListener('hashchange', () => history.replaceState(history.state, '', hash));

// a page from a static host is not shown until a worker that can read its address answers it
if (location.search && document.querySelector('meta[name="shopcalc-static"]')) document.documentElement.hidden = true;
if (document.readyState === 'complete') afterPaint();
else addEventListener('load', afterPaint);
