/** What this file needs of the W3C Trusted Types interface, which the compiler's DOM library does not describe. */
interface ScriptUrlPolicy {
  createScriptURL(url: string): unknown;
}
interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): ScriptUrlPolicy;
}

/**
 * The address itself when it belongs to the app's own origin.
 *
 * @throws TypeError naming the address when it points anywhere else.
 */
export function ownScriptUrl(url: string, page: string): string {
  const script = new URL(url, page);
  if (script.origin !== new URL(page).origin) throw new TypeError(`${script.href} is not a script of this app`);
  return script.href;
}

/** The one policy name that the page's Content Security Policy lets us make. */
const POLICY = 'carrybook';

let policy: ScriptUrlPolicy | undefined;

/**
 * A script address of our own origin, in the form that `require-trusted-types-for 'script'` asks for.
 * The one Trusted Types policy of the app is made here, on first use; a browser without
 * Trusted Types gets the checked address as text.
 *
 * @throws TypeError naming the address when it points to another origin.
 */
export function trustedScriptUrl(url: string): string {
  const factory = (globalThis as { trustedTypes?: PolicyFactory }).trustedTypes;
  if (!factory) return ownScriptUrl(url, location.href);
  policy ??= factory.createPolicy(POLICY, { createScriptURL: (script) => ownScriptUrl(script, location.href) });
  // The browser's own type for it is opaque; Worker and register() take it where they take a string.
  return policy.createScriptURL(url) as string;
}
