// The files of a start, fetched all at once, with their bytes counted as they travel.

/** ms */
const PROGRESS_EVERY = 100;

/**
 * @typedef {Record<string, [raw: number, compressed: number]>} Sizes
 * @typedef {{ name: string, arrived: number, packed: boolean }} File
 * @typedef {{ response: Response, counted: Promise<void> }} Arriving
 */

export class Arrivals {
  /** @type {File[]} */
  #files = [];
  /** @type {Map<string, Promise<Arriving>>} */
  #started = new Map();
  /** @type {Sizes} */
  #sizes = {};
  #tell;
  #told = 0;
  #hushed = false;
  /** @type {(problem: Error) => void} */
  #fail = () => {};
  /** Rejects when one of the files does not come, or cannot be used. */
  broken = /** @type {Promise<never>} */ (new Promise((_, reject) => (this.#fail = reject)));

  /**
   * @param {string[]} addresses
   * @param {string} sizes  where the sizes of all files stand, by name
   * @param {(loaded: number, total: number) => void} tell  bytes; both are 0 until the sizes have
   *   come
   */
  constructor(addresses, sizes, tell) {
    this.#tell = tell;
    void this.#learnSizes(sizes); // asked for first: all else may be there before them
    for (const address of addresses) {
      const file = { name: nameOf(address), arrived: 0, packed: true };
      const arriving = this.#fetch(address, file);
      arriving.catch(this.#fail);
      this.#files.push(file);
      this.#started.set(address, arriving);
    }
  }

  /** One that has come and cannot be used. @param {Error} problem */
  fail(problem) {
    this.#fail(problem);
  }

  /** A file as it comes. Each is read once. @param {string} address */
  async take(address) {
    const { response } = await /** @type {Promise<Arriving>} */ (this.#started.get(address));
    return response;
  }

  /**
   * A file only when all of it is there. One that breaks off never comes: the loader would start
   * Python on what it has, and what Python says to that would hide the reason. Undefined for what
   * is not among these files.
   * @param {string} address
   */
  whole(address) {
    return this.#started
      .get(address)
      ?.then(({ response, counted }) => counted.then(() => response))
      .catch(() => /** @type {Promise<never>} */ (new Promise(() => {})));
  }

  /** @param {string} address */
  async bytes(address) {
    const response = await /** @type {Promise<Response>} */ (this.whole(address));
    return new Uint8Array(await response.arrayBuffer());
  }

  /**
   * Python runs: a count that comes only now, of the sizes for one, must not say that it is still
   * being fetched.
   */
  hush() {
    this.#hushed = true;
  }

  /** @param {string} address */
  async #learnSizes(address) {
    try {
      this.#sizes = await (await fetch(address)).json();
      this.#say();
    } catch {
      this.#sizes = {}; // the line then lacks its numbers
    }
  }

  /**
   * @param {string} address
   * @param {File} file
   * @returns {Promise<Arriving>}
   */
  async #fetch(address, file) {
    const response = await fetch(address).catch(() => {
      throw new Error(`${file.name} could not be fetched.`);
    });
    if (!response.ok || !response.body)
      throw new Error(`${file.name} could not be fetched (${response.status}).`);
    file.packed = response.headers.has("Content-Encoding");
    // Counted on a copy: what was fetched itself is compiled, since a browser keeps the compiled
    // code of that alone for the next visit.
    const copy = /** @type {ReadableStream<Uint8Array>} */ (response.clone().body);
    const counted = this.#count(copy.getReader(), file).catch(() => {
      throw new Error(`${file.name} broke off.`);
    });
    counted.catch(this.#fail);
    return { response, counted };
  }

  /**
   * @param {ReadableStreamDefaultReader<Uint8Array>} reader
   * @param {File} file
   */
  async #count(reader, file) {
    for (let over = false; !over;) {
      const { done, value } = await reader.read();
      over = done;
      file.arrived += value?.length ?? 0;
      if (done || performance.now() - this.#told > PROGRESS_EVERY) this.#say();
    }
  }

  /** A browser counts what it has unpacked; the line speaks of what has traveled. */
  #say() {
    if (this.#hushed) return;
    this.#told = performance.now();
    let [loaded, total] = [0, 0];
    for (const { name, arrived, packed } of this.#files) {
      const [raw, compressed] = this.#sizes[name] ?? [0, 0];
      const travels = packed ? compressed : raw;
      loaded += raw ? arrived * (travels / raw) : 0;
      total += travels;
    }
    this.#tell(Math.round(loaded), total);
  }
}

/** @param {string} address */
function nameOf(address) {
  return address.slice(address.lastIndexOf("/") + 1);
}
