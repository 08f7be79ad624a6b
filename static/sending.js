// How a job leaves the device and comes back: packed in a link, or as a file.
import { make } from './elements.js';

export const LARGEST = 1000000, CARRIES = '#job=';

async function packed(text) {
  const bytes = new Uint8Array(await new Response(new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer());
  return btoa(Array.from(bytes, byte => String.fromCharCode(byte)).join('')).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

export async function unpacked(code) {
  const bytes = Uint8Array.from(atob(code.replaceAll('-', '+').replaceAll('_', '/')), mark => mark.charCodeAt(0));
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')).pipeThrough(new TextDecoderStream()).getReader();
  let text = '';
  for (let part = await reader.read(); !part.done && text.length <= LARGEST; part = await reader.read()) text += part.value;
  return text;
}

export const linkTo = async job => `${location.origin}/job${CARRIES}${await packed(JSON.stringify(job))}`;

export function download(text, name, type) {
  const link = make('a', { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

export const fileName = (job, ending) => `${job.title.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '').toLowerCase() || 'job'}.${ending}`;

// Safari copies at the tap or not at all: the job is still being read then, and what is copied is a promise of its link.
export function beginCopy(coming) {
  const coded = coming.then(job => job && linkTo(job));
  return { coded, copied: takesLink(coded) };
}

async function takesLink(coded) {
  const asBlob = link => link ? new Blob([link], { type: 'text/plain' }) : Promise.reject(new Error('there is no job to copy'));
  try {
    await navigator.clipboard.write([new ClipboardItem({ 'text/plain': coded.then(asBlob) })]);
    return true;
  } catch {
    return false;
  }
}
