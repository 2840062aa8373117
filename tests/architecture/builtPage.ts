/** Every piece of script or style that stands in a page instead of a file of its own. */
export function inlineCode(page: string): string[] {
  const scripts = [...page.matchAll(/<script\b(?![^>]*\ssrc=)[^>]*>/g)];
  const scriptBodies = [...page.matchAll(/<script\b[^>]*\ssrc=[^>]*>([^<\s]+)/g)];
  const styles = [...page.matchAll(/<style\b[^>]*>/g)];
  const tags = [...page.matchAll(/<[a-z][^>]*>/g)].map((match) => match[0]);
  const attributes = tags.flatMap((tag) => [...tag.matchAll(/\s(?:style|on\w+)\s*=/g)]);
  return [...scripts, ...scriptBodies, ...styles, ...attributes].map((match) => match[0]);
}

/** Addresses that are only names or words: XML namespaces, the JSON Schema dialect, and where two libraries' errors say to read on. */
const NEVER_ASKED_FOR = [
  /^https?:\/\/www\.w3\.org\/(?:\d{4}\/|XML\/|TR\/)/,
  /^https?:\/\/json-schema\.org\//,
  // Dexie's errors "IndexedDB API missing" and "Transaction committed too early"; Workbox's error of a file not kept.
  /^https:\/\/tinyurl\.com\/y2uuvskb$/,
  /^http:\/\/bit\.ly\/2kdckMn$/,
  /^https:\/\/bit\.ly\/wb-precache$/,
];

/** Every absolute address in a built file that could be asked for. */
export function foreignAddresses(text: string): string[] {
  const absolute = [...text.matchAll(/\b(?:https?|wss?):\/\/[a-z0-9][^\s"'`)\\<>]*/gi)].map((match) => match[0]);
  const withoutScheme = [...text.matchAll(/(?<=["'`(=])\/\/[a-z0-9-]+\.[a-z][^\s"'`)\\<>]*/gi)].map(
    (match) => match[0],
  );
  return [...absolute, ...withoutScheme].filter((address) => !NEVER_ASKED_FOR.some((known) => known.test(address)));
}

/** What a built module loads before it runs. */
export function staticImports(script: string): string[] {
  const named = [...script.matchAll(/\b(?:import|export)\b[\w$*{},\s]*?\bfrom\s*["'](\.[^"']+)["']/g)];
  const bare = [...script.matchAll(/\bimport\s*["'](\.[^"']+)["']/g)];
  return [...named, ...bare].map((match) => match[1]);
}
