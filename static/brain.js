// Answers a request with what the portable code decides, rendered by the templates. No browser needed.
const setups = {};
const world = { version: VERSION, numbers, units: UNITS, setups };

// A setup's data is read and its formulas are made when they are first asked for: a cold start needs one card.
function addSetup(slug, about, formulas) {
  let made;
  Object.defineProperty(setups, slug, {
    enumerable: true,
    get: () => made ??= { about: JSON.parse(about), formulas: formulas() },
  });
}

Mustache.escape = text => String(text).replace(/[&<>"']/g, mark => ESCAPES[mark]);

function answer(path, query, part) {
  const found = respond(world, path, query, part);
  if (found.data) return { status: found.status, type: 'application/json', body: JSON.stringify(found.data) };
  return { status: found.status, type: 'text/html; charset=utf-8', body: Mustache.render(TEMPLATES[found.template], found.view, TEMPLATES) };
}
