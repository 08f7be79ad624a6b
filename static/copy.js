// The copy for no signal: keep the worker, say whether there is one, offer a newer version.
import { noAnswer, settled } from './answers.js';
import { show } from './elements.js';

// a page whose address its host cannot read is hidden by app.js
const seesNoQuery = document.documentElement.hidden;

export async function keepWorker() {
  if (!('serviceWorker' in navigator)) return goWithout();
  const had = Boolean(navigator.serviceWorker.controller);
  show('keeping', !had);
  try {
    const kept = await navigator.serviceWorker.register('/worker.js', { updateViaCache: 'none' });
    watch(kept, had);
    await navigator.serviceWorker.ready;
    show('keeping', false);
    show('kept', true);
    // a page that was loaded past its worker stays without it
    if (seesNoQuery) setTimeout(() => navigator.serviceWorker.controller || uncover(), 1000);
    document.addEventListener('visibilitychange', () => document.hidden || kept.update().catch(() => {}));
  } catch {
    // with no signal the worker cannot be fetched anew; the one at hand goes on answering
    show('keeping', false);
    if (had) show('kept', true);
    else goWithout();
  }
}

function goWithout() {
  show('never', true);
  uncover();
}

// No worker will answer the address, and what its host has answers another one.
function uncover() {
  if (!seesNoQuery) return;
  document.documentElement.hidden = false;
  noAnswer('answer', 'sheet');
}

// A newer version waits until somebody asks for it, in this tab or in another one.
function watch(kept, isHeld) {
  let asked = false, overtaken = false;
  const offer = event => {
    show('newer', overtaken || Boolean(kept.waiting && navigator.serviceWorker.controller));
    if (event?.target.state === 'redundant' && !kept.active) {
      goWithout();
      show('keeping', false);
    }
  };
  const follow = worker => worker?.addEventListener('statechange', offer);
  offer();
  follow(kept.installing);
  follow(kept.waiting);
  kept.addEventListener('updatefound', () => follow(kept.installing));
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // a tab that did not ask keeps what it shows, and offers the reload
    if (asked || seesNoQuery) return location.reload();
    // the first worker that a page gets overtakes nothing
    overtaken = isHeld;
    isHeld = true;
    offer();
  });
  document.querySelector('[data-use-newer]').addEventListener('click', async () => {
    asked = true;
    await settled();
    if (kept.waiting) kept.waiting.postMessage('use-newer');
    else location.reload();
  });
}
