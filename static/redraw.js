// Puts an answer in the place of the one before it.

// Mostly only numbers change: then the elements stay and their texts are put in, which costs a phone half as much. Where
// something comes or goes only the least element that holds it is filled anew.
export function redraw(place, html) {
  const fresh = document.createElement('template');
  fresh.innerHTML = html;
  refill(place, fresh.content);
}

function refill(old, now) {
  const mine = old.childNodes, theirs = now.childNodes;
  if (!areAllAlike(mine, theirs)) return old.replaceChildren(...theirs);
  for (let nth = 0; nth < mine.length; nth += 1) {
    const one = mine[nth], other = theirs[nth];
    if (one.nodeType !== Node.TEXT_NODE) refill(one, other);
    else if (one.data !== other.data) one.data = other.data;
  }
}

function areAllAlike(mine, theirs) {
  if (mine.length !== theirs.length) return false;
  for (let nth = 0; nth < mine.length; nth += 1) if (!areAlike(mine[nth], theirs[nth])) return false;
  return true;
}

function areAlike(one, other) {
  const said = one.attributes, wanted = other.attributes;
  if (one.nodeName !== other.nodeName || said?.length !== wanted?.length) return false;
  for (let nth = 0; nth < (said?.length ?? 0); nth += 1) if (other.getAttribute(said[nth].name) !== said[nth].value) return false;
  return true;
}
