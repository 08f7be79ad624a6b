// Answers a request with what the portable code decides, rendered by the templates. No browser needed.
const setups = {}, texts = {};
const world = { version: VERSION, numbers, units: UNITS, stands: STANDS, stages: STAGES, runs: RUNS, cautions: CAUTIONS, lumber: LUMBER, setups, laid: { key: '', laid: [] } };

// A setup's data is read and its formulas are made when they are first asked for: a cold start needs one card.
function addFormulas(slug, make) {
  const parts = {};
  let made;
  Object.defineProperty(setups, slug, {
    enumerable: true,
    get: () => made ??= withFormulas(readParts(parts), make()),
  });
  texts[slug] = parts;
}

// Formulas come in order, without their keys, and name values by letters.
function withFormulas(about, made) {
  const names = Object.fromEntries(value_names(about).map((name, place) => [short_name(place), name]));
  const formulas = {};
  formula_keys(about).forEach((key, place) => { formulas[key] = (known, numbers) => made[place](byShortName(known, names), numbers); });
  return { about, formulas };
}

function readParts(texts) {
  const about = {};
  for (const part in texts) about[part] = JSON.parse(texts[part]);
  for (const part of ['inputs', 'results', 'checks', 'operations']) unpack(about[part], part);
  for (const lines of Object.values(about.lines)) unpack(lines, 'lines');
  for (const check of Object.values(about.checks)) if (check.spoils === '*') check.spoils = Object.keys(about.results).sort();
  const results = Object.keys(about.results), checks = Object.keys(about.checks), after = about.program;
  about.program = [];
  for (let place = 0; place <= results.length; place += 1)
    about.program.push(...checks.filter((_, each) => after[each] === place), ...results.slice(place, place + 1));
  for (const picture of about.pictures) unpack(picture.shapes, 'shapes');
  return about;
}

// What most lines of a card say of themselves is sent once for all, and so is every word that says what is meant.
function unpack(lines, sort) {
  const keys = Object.fromEntries(KEYS[sort].map((key, place) => [short_name(place), key]));
  for (const place in lines) {
    const line = { ...USUAL[sort] };
    for (const short in lines[place]) line[keys[short]] = lines[place][short];
    lines[place] = line;
  }
}

function addPart(slug, part, text) {
  texts[slug][part] = text;
}

Mustache.escape = text => String(text).replace(/[&<>"']/g, mark => ESCAPES[mark]);

// A name of the query that is safe as a key in both runtimes; shopcalc/exact.py does the same.
const plainName = name => /^[a-z][a-z0-9_]*$/.test(name) && name !== 'constructor' ? name : '~' + name;

// `pairs` are the names and texts of the query, in order. Of a name given twice a page takes the first text, and data are
// refused; errors have the names as they were typed. shopcalc/exact.py does the same.
function decide(path, pairs, part) {
  const query = {}, twice = new Set();
  for (const [name, text] of pairs) {
    const plain = plainName(name);
    if (Object.hasOwn(query, plain)) twice.add(plain);
    else query[plain] = text;
  }
  const found = respond(world, path, query, part);
  if (!found.data || found.status === 404) return found;
  const errors = { ...found.data.errors };
  for (const name in query) if (twice.has(name)) errors[name] = 'This is given twice.';
  const shown = Object.entries(errors).map(([name, message]) => [name.replace('~', ''), message]);
  return shown.length ? { status: 422, data: { errors: Object.fromEntries(shown) } } : found;
}

function answer(path, pairs, part) {
  return rendered(decide(path, pairs, part));
}


// Whether brackets are nested past what a job can hold; shopcalc/exact.py does the same.
function isDeep(text) {
  let depth = 0;
  for (const [mark] of text.matchAll(/"(?:[^"\\]+|\\.)*"?|[[\]{}]/gs)) {
    depth += '[{'.includes(mark) - ']}'.includes(mark);
    if (depth > DEEPEST) return true;
  }
  return false;
}

// What is said of a job that is sent as JSON text; a text that is no JSON is a job refused.
function decideDocument(path, text) {
  let job = null;
  try { job = isDeep(text) ? null : JSON.parse(text); } catch { /* no job */ }
  // half a character, which JSON can name, cannot be shown
  if (/(^|[^\\])(\\\\)*\\ud[89a-f]/.test(JSON.stringify(job))) job = null;
  return respond_document(world, path, job);
}

function answerDocument(path, text) {
  return rendered(decideDocument(path, text));
}

function rendered(found) {
  if (found.data) return { status: found.status, type: 'application/json', body: JSON.stringify(found.data) };
  if ('text' in found) return { status: found.status, type: 'text/csv; charset=utf-8', body: found.text };
  return { status: found.status, type: 'text/html; charset=utf-8', part: found.template, body: Mustache.render(TEMPLATES[found.template], found.view, TEMPLATES) };
}
