/**
 * Stands in every page of the stick. Served, a page gets its scripts as ever. Opened from a file, browsers refuse modules,
 * workers and files of words: then they come as plain scripts with the text in them, and are made here what they were.
 */
(() => {
  const fromFile = location.protocol === 'file:';
  const late = {};
  const took = {};
  const nameOf = (address) =>
    new URL(address, globalThis.stickRoot).href.slice(globalThis.stickRoot.length).replace(/\?.*/, '');
  /** What the twin of a file tells, once it is there. */
  const twin = (name) => {
    late[name] ??= new Promise((done, failed) => {
      took[name] = done;
      const script = document.createElement('script');
      script.src = `${globalThis.stickRoot}${name}.twin.js`;
      script.onerror = () => {
        delete late[name];
        failed(new Error(name));
      };
      document.head.append(script);
    });
    return late[name];
  };
  globalThis.stickModule = (name, imports, text) => took[name]({ imports, text });
  globalThis.stickText = (name, text) => took[name](text);
  const modules = {};
  /** Address of a module made from the text of a file and of all that it imports. */
  const moduleOf = (name) => {
    modules[name] ??= twin(name).then(async ({ imports, text }) => {
      const addresses = await Promise.all(imports.map((one) => moduleOf(`_astro/${one}`)));
      const whole = imports.reduce((code, one, at) => code.replaceAll(`stick:${one}`, addresses[at]), text);
      return URL.createObjectURL(new Blob([whole], { type: 'text/javascript' }));
    });
    modules[name].catch(() => delete modules[name]);
    return modules[name];
  };
  globalThis.stickImport = async (address) => {
    // From a page the address counts from the page, from a script from the root.
    const { href } = new URL(address, address.startsWith('_astro/') ? globalThis.stickRoot : location.href);
    return import(fromFile ? await moduleOf(nameOf(href)) : href);
  };
  if (!fromFile) return;
  const fetched = globalThis.fetch;
  globalThis.fetch = async (address, more) => {
    const { href } = new URL(address, location.href);
    if (!href.startsWith(globalThis.stickRoot)) return fetched(address, more);
    return new Response(await twin(nameOf(href)));
  };
  const RealWorker = globalThis.Worker;
  /** A worker that starts once its text is there; what it is told before waits. */
  globalThis.Worker = class extends EventTarget {
    constructor(address) {
      super();
      this.told = [];
      const tell = (event) => this.dispatchEvent(new event.constructor(event.type, event));
      twin(nameOf(address)).then(
        (text) => {
          // A module it could not be from a file; it imports nothing, so it is a plain script.
          this.real = new RealWorker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })));
          this.real.onmessage = tell;
          this.real.onerror = tell;
          for (const one of this.told) this.real.postMessage(one);
        },
        () => this.dispatchEvent(new Event('error', { cancelable: true })),
      );
    }
    postMessage(what) {
      if (this.real) this.real.postMessage(what);
      else this.told.push(what);
    }
    terminate() {
      this.real?.terminate();
    }
  };
  // A folder opened from a file shows its list: a link to a page leads to the page itself.
  addEventListener(
    'click',
    ({ target }) => {
      const link = target.closest?.('a[href]');
      if (link?.protocol === 'file:' && link.pathname.endsWith('/')) link.pathname += 'index.html';
    },
    true,
  );
})();
