/** What the page asks the worker for: one computation by name, with an id to match the answer. */
export interface WorkRequest {
  readonly id: number;
  readonly name: string;
  readonly args: readonly unknown[];
}

/** What the worker answers: the value, or the error as text (an Error object does not travel well). */
export type WorkAnswer =
  | { readonly id: number; readonly kind: 'done'; readonly value: unknown }
  | { readonly id: number; readonly kind: 'failed'; readonly message: string };
