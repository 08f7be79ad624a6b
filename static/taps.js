// A second tap where the first one has made way for something else was not meant for that.
const AT_ONCE = 400, FINGER = 24;
let first = null, isSecond = false;

// What this click fell on goes away: whatever comes to lie there is left alone for a moment.
export function endsHere({ timeStamp, clientX, clientY, detail }) {
  if (detail) first = { timeStamp, clientX, clientY };
}

const isThere = ({ timeStamp, clientX, clientY }) => first && timeStamp - first.timeStamp < AT_ONCE
  && Math.hypot(clientX - first.clientX, clientY - first.clientY) < FINGER;

// the focus goes with the mouse button, which a tap has too
for (const kind of ['mousedown', 'click']) document.addEventListener(kind, event => {
  if (kind === 'mousedown') isSecond = isThere(event);
  // keys press without one
  if (!isSecond || !event.detail) return;
  event.preventDefault();
  event.stopImmediatePropagation();
}, true);
