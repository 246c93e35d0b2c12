// The build copies the library's single module beside ours as idb.js; its types come from the
// package.
export * from "idb";
