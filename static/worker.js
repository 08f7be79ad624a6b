// The service worker: the server, moved into the phone. It keeps the files, answers every other address itself,
// and waits with a new version until the person says so.
const CACHE = 'shopcalc-' + BUILD;

// A page from here holds its style sheet: asked for apart, it would come a frame later.
const STYLE_LINK = TEMPLATES.style.trim(), STYLE_HELD = `<style>${STYLE}</style>`;

self.addEventListener('install', event => event.waitUntil(keepFiles()));
self.addEventListener('activate', event => event.waitUntil(takeOver()));
self.addEventListener('message', ({ data, ports: [port] }) => {
  if (data === 'use-newer') return self.skipWaiting();
  port.postMessage(settingsOf(data));
});
self.addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (url.origin !== self.location.origin) return;
  if (event.request.method === 'POST' && ['/job', '/job.json', '/job.csv'].includes(url.pathname)) return event.respondWith(aboutJob(event.request, url));
  if (event.request.method !== 'GET') return;
  event.respondWith([...KEPT, ...KEPT_LATER].includes(url.pathname) ? keptFile(event.request, url) : answerHere(event.request, url));
});

// The settings of a card, at every key of a page; what cannot be told is asked for by a request, which says why.
function settingsOf({ path, pairs }) {
  try {
    const { status, part, body } = answer(path, pairs, 'answer');
    return { status, part, body };
  } catch {
    return null;
  }
}

// All or nothing: a version with half its files, or with some of another version's, is not installed.
async function keepFiles() {
  // past the browser's own cache, or a new version would be made of old files
  const answers = await Promise.all(KEPT.map(path => fetch(path, { cache: 'reload' })));
  const bodies = await Promise.all(answers.map(answer => answer.clone().blob()));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await new Blob(bodies).arrayBuffer()));
  if (Array.from(digest.slice(0, 16), byte => byte.toString(16).padStart(2, '0')).join('') !== SUM) throw new Error('files of another version');
  const cache = await caches.open(CACHE);
  await Promise.all(KEPT.map((path, nth) => cache.put(path, answers[nth])));
}

async function takeOver() {
  for (const name of await caches.keys())
    if (name.startsWith('shopcalc-') && name !== CACHE) {
      await carryOver(await caches.open(name));
      await caches.delete(name);
    }
  await self.clients.claim();
}

// What was kept when it was asked for has its version in its name, and is not asked for again.
async function carryOver(older) {
  const cache = await caches.open(CACHE);
  for (const path of KEPT_LATER) {
    const kept = await older.match(path);
    if (kept && isFile(kept)) await cache.put(path, kept).catch(() => {});
  }
}

// What few ask for, such as the drawer of codes, is kept when it has been asked for once.
async function keptFile(request, url) {
  const cache = await caches.open(CACHE), kept = await cache.match(url.pathname);
  if (kept) return kept;
  const answer = await fetch(request);
  // a full storage takes nothing, and the answer is there all the same
  if (isFile(answer)) await cache.put(url.pathname, answer.clone()).catch(() => {});
  return answer;
}

// What a network sends that wants somebody to sign in, or a host for a page that it has not, is none of the files.
function isFile(answer) {
  return answer.ok && !answer.redirected && !/html/.test(answer.headers.get('Content-Type'));
}

async function aboutJob(request, url) {
  return asResponse(answerDocument(url.pathname, await request.text()));
}

function answerHere(request, url) {
  const path = decoded(url.pathname);
  if (path.startsWith('/static/') || path === '/worker.js') return fetch(request);
  // scripts run where a worker runs, so a page may open with its answer and fetch the rest once that is painted
  const found = answer(path, [...url.searchParams], request.headers.get('HX-Target') || 'opening');
  // what is no card may be another page of the same host
  return found.part === 'missing' ? fetch(request).catch(() => asResponse(found)) : asResponse(found);
}

function asResponse(found) {
  const headers = { 'Content-Type': found.type, 'X-Content-Type-Options': 'nosniff' };
  if (found.part) headers['X-Part'] = found.part;
  // a part of a card lives under the policy of the page that it joins, and data are no page
  const isPage = found.part && !PARTS.includes(found.part);
  if (isPage) Object.assign(headers, { 'Content-Security-Policy': POLICY, 'Referrer-Policy': 'no-referrer' });
  return new Response(isPage ? found.body.replace(STYLE_LINK, () => STYLE_HELD) : found.body, { status: found.status, headers });
}

function decoded(path) {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
