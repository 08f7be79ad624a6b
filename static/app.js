// What only a browser can do: keep the worker, say whether there is a copy for no signal, offer a newer version,
// keep the address in step with the form. What the cards say is decided elsewhere.
const show = (name, on) => document.querySelectorAll(`[data-signal="${name}"]`).forEach(each => { each.hidden = !on; });

async function keepWorker() {
  if (!('serviceWorker' in navigator)) return show('never', true);
  const had = navigator.serviceWorker.controller;
  show('keeping', !had);
  try {
    const kept = await navigator.serviceWorker.register('/worker.js', { updateViaCache: 'none' });
    watch(kept);
    await navigator.serviceWorker.ready;
    show('keeping', false);
    show('kept', true);
    document.addEventListener('visibilitychange', () => document.hidden || kept.update().catch(() => {}));
  } catch {
    // with no signal the worker cannot be fetched anew; the one at hand goes on answering
    show('keeping', false);
    show(had ? 'kept' : 'never', true);
  }
}

function watch(kept) {
  const offer = event => {
    show('newer', Boolean(kept.waiting && navigator.serviceWorker.controller));
    if (event?.target.state === 'redundant' && !kept.active) show('never', true), show('keeping', false);
  };
  offer();
  kept.addEventListener('updatefound', () => kept.installing?.addEventListener('statechange', offer));
  document.querySelector('[data-use-newer]').addEventListener('click', () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
    kept.waiting.postMessage('use-newer');
  });
}

// Every card is a link: the address says what is typed, also while it cannot be read.
function afterRequest(event) {
  if (event.detail.elt.id !== 'sheet') return;
  const typed = event.detail.requestConfig.triggeringEvent?.type === 'input';
  if (typed) history.replaceState(null, '', event.detail.pathInfo.finalRequestPath);
  markWrong();
}

function markWrong() {
  for (const note of document.querySelectorAll('#inputs .note')) {
    const entry = document.getElementById(note.id.replace('note-', 'in-'));
    if (note.classList.contains('wrong')) entry.setAttribute('aria-invalid', 'true');
    else entry.removeAttribute('aria-invalid');
  }
}

// The page answers before any script has run; htmx comes after it is painted. (As an async script it could miss
// DOMContentLoaded, which it waits for unless the page is complete.)
function loadHtmx() {
  const script = document.createElement('script');
  script.src = HTMX;
  script.onload = () => {
    htmx.defineExtension('plain', { handleSwap: swapPlain });
    answerWhatWasTyped();
  };
  document.head.append(script);
}

// Parts of a card hold nothing of htmx's, so nothing needs cleaning up: htmx would fire two events for every
// element that goes, which at a phone's speed costs more than drawing the new ones.
function swapPlain(style, target, fragment) {
  if (style !== 'plain') return false;
  target.replaceChildren(fragment);
  return true;
}

function answerWhatWasTyped() {
  const form = document.getElementById('inputs');
  const typed = form && Array.from(form.elements).some(each => each.tagName === 'INPUT' && each.value !== each.defaultValue);
  if (typed) form.dispatchEvent(new Event('input', { bubbles: true }));
}

const HTMX = document.currentScript.dataset.htmx;
document.addEventListener('htmx:afterRequest', afterRequest);
if (document.readyState === 'complete') loadHtmx();
else addEventListener('load', loadHtmx);
keepWorker();
