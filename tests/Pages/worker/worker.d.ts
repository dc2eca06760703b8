// What a service worker finds beside what every worker has.

/** Put before its text by the server: the version of the pages, and their files. */
declare const shell: { version: string; files: string[] };
declare const clients: Clients;
declare function skipWaiting(): Promise<void>;

interface DedicatedWorkerGlobalScopeEventMap {
  install: ExtendableEvent;
  activate: ExtendableEvent;
  fetch: FetchEvent;
}
