// fettleStore(key) keeps things on this device, over reloads and a killed process.
// IndexedDB, because localStorage was seen to lose its last write when the process is
// killed. All pages opened from disk share it: the key says which one.
//
//   load(name)        a promise of what was kept, undefined for nothing
//   save(name, what)  keeps a copy. It is handed over at once, so that it outlives
//                     the page; the promise is kept when it is on the disk
const fettleStore = (key) => {
  "use strict";
  const open = new Promise((resolve, reject) => {
    const request = indexedDB.open("fettle", 1);
    request.onupgradeneeded = () => request.result.createObjectStore("builds");
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const run = (db, mode, work) => new Promise((resolve, reject) => {
    const t = db.transaction("builds", mode, { durability: "strict" }), request = work(t.objectStore("builds"));
    t.oncomplete = () => resolve(request.result);
    t.onerror = t.onabort = () => reject(t.error);
    if (mode === "readwrite" && t.commit) t.commit();
  });
  let db;
  open.then((opened) => { db = opened; }, () => {});
  return {
    load: (name) => open.then((opened) => run(opened, "readonly", (builds) => builds.get(key + " " + name))),
    save: (name, what) => (db ? run(db, "readwrite", (builds) => builds.put(what, key + " " + name)) : Promise.reject(new Error("not open"))),
  };
};
