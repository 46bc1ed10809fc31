import type { Page } from '@playwright/test';

/** Everything that the browser keeps for the page, as text. */
export function keptInBrowser(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const out: string[] = [JSON.stringify({ ...localStorage }), JSON.stringify({ ...sessionStorage })];
    for (const { name } of await indexedDB.databases()) {
      if (name === undefined) continue;
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const open = indexedDB.open(name);
        open.onsuccess = () => resolve(open.result);
        open.onerror = () => reject(open.error);
      });
      for (const store of db.objectStoreNames) {
        const all = await new Promise<unknown>((resolve, reject) => {
          const get = db.transaction(store).objectStore(store).getAll();
          get.onsuccess = () => resolve(get.result);
          get.onerror = () => reject(get.error);
        });
        out.push(JSON.stringify(all));
      }
      db.close();
    }
    return out.join('\n');
  });
}
