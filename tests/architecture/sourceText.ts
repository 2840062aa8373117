/** One source file, taken apart as far as the rules need: what is code, what is said in comments, what stands in strings. */
export interface SourceText {
  /** The file with comments blanked; strings stand. Same length and lines as the file. */
  readonly code: string;
  /** The file with comments and the insides of strings blanked. */
  readonly bare: string;
  /** The file with everything but comments blanked. */
  readonly comments: string;
}

/** A slash after one of these begins a regular expression, after anything else it divides or closes a tag. */
const BEFORE_REGEX = /(?:[(,=:[!&|?{};+\-*%~^]|\b(?:return|typeof|case|in|of|void|delete|await|yield)|^)\s*$/;

/** Where the literal that starts at `from` ends (index after it). Plain strings end at their line's end at the latest. */
function endOfLiteral(text: string, from: number): number {
  const quote = text[from];
  let inClass = false;
  for (let at = from + 1; at < text.length; at += 1) {
    const char = text[at];
    if (char === '\\') at += 1;
    else if (char === '\n' && quote !== '`') return at;
    else if (quote === '/' && char === '[') inClass = true;
    else if (quote === '/' && char === ']') inClass = false;
    else if (char === quote && !inClass) return at + 1;
  }
  return text.length;
}

const blank = (text: string): string => text.replace(/[^\n]/g, ' ');

/** Takes a TypeScript file apart. A template literal counts as one string, its `${}` parts included. */
export function sourceText(text: string): SourceText {
  let code = '';
  let bare = '';
  let comments = '';
  for (let at = 0; at < text.length; ) {
    const pair = text.slice(at, at + 2);
    const char = text[at];
    if (pair === '//' || pair === '/*') {
      const close = pair === '//' ? text.indexOf('\n', at) : text.indexOf('*/', at + 2);
      const end = close === -1 ? text.length : pair === '//' ? close : close + 2;
      const piece = text.slice(at, end);
      code += blank(piece);
      bare += blank(piece);
      comments += piece;
      at = end;
    } else if (
      char === "'" ||
      char === '"' ||
      char === '`' ||
      (char === '/' && BEFORE_REGEX.test(bare.slice(-200).trimEnd()))
    ) {
      const end = endOfLiteral(text, at);
      const piece = text.slice(at, end);
      code += piece;
      bare += char + blank(piece.slice(1, -1)) + piece.slice(Math.max(1, piece.length - 1));
      comments += blank(piece);
      at = end;
    } else {
      code += char;
      bare += char;
      comments += char === '\n' ? '\n' : ' ';
      at += 1;
    }
  }
  return { code, bare, comments };
}

export interface Import {
  readonly from: string;
  readonly line: number;
}

export const lineAt = (text: string, index: number): number => text.slice(0, index).split('\n').length;

/** Every module a file names: import, export … from, import(), `import('…')` as a type, and new URL('…', import.meta.url). */
export function importsOf({ code, bare }: SourceText): Import[] {
  const forms = [
    /\b(?:import|export)\s+(?:type\s+)?[\w$*{},\s]*?\bfrom\s*(['"])(.*?)\1/g,
    /\bimport\s*(['"])(.*?)\1/g,
    /\bimport\s*\(\s*(['"`])(.*?)\1/g,
    /\bnew\s+URL\(\s*(['"`])(.*?)\1\s*,\s*import\.meta\.url/g,
  ];
  return forms.flatMap((form) =>
    [...code.matchAll(form)]
      // The same words inside a string are no import.
      .filter((match) => bare[match.index] === code[match.index])
      .map((match) => ({ from: match[2], line: lineAt(code, match.index) })),
  );
}

/** Names a file exports, types included; `default` for a default export. */
export function exportsOf({ bare }: SourceText): string[] {
  const declared = [
    ...bare.matchAll(
      /^export\s+(?:declare\s+)?(?:async\s+)?(?:abstract\s+)?(?:function\*?|const|let|class|interface|type)\s+([\w$]+)/gm,
    ),
  ].map((match) => match[1]);
  const listed = [...bare.matchAll(/^export\s+(?:type\s+)?\{([^}]*)\}/gm)].flatMap((match) =>
    match[1].split(',').flatMap((name) => name.trim().split(/\s+/).at(-1) || []),
  );
  return /^export\s+default\b/m.test(bare) ? [...declared, ...listed, 'default'] : [...declared, ...listed];
}
