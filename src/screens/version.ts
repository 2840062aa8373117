/** The version of the app, as the build was told. */
export const version: string = import.meta.env.VITE_CARRYBOOK_VERSION;
