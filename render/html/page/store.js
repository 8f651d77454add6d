// fettleStore(key) keeps one text on this device, over reloads and a killed
// process. IndexedDB, because localStorage was seen to lose its last write when the
// process is killed. All pages opened from disk share it: the key says which one.
//
//   load()      a promise of what was kept, undefined for nothing
//   save(what)  keeps a copy; writes that follow one another closely become one
const fettleStore = (key) => {
  "use strict";
  const open = new Promise((resolve, reject) => {
    const request = indexedDB.open("fettle", 1);
    request.onupgradeneeded = () => request.result.createObjectStore("builds");
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const run = (mode, work) => open.then((db) => new Promise((resolve, reject) => {
    const t = db.transaction("builds", mode, { durability: "strict" }), request = work(t.objectStore("builds"));
    t.oncomplete = () => resolve(request.result);
    t.onerror = t.onabort = () => reject(t.error);
  }));
  let pending, writing = Promise.resolve();
  return {
    load: () => run("readonly", (builds) => builds.get(key)),
    save: (what) => {
      const first = pending === undefined;
      pending = what;
      if (first) {
        writing = writing.then(() => {
          const now = pending;
          pending = undefined;
          return run("readwrite", (builds) => builds.put(now, key));
        });
      }
      return writing;
    },
  };
};
