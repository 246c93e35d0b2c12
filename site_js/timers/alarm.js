// Sound and vibration when a timer is over. Browsers allow them only after a touch on this page, so
// every touch makes ready.

/** ms between two calls, and how long they go on */
const PAUSE = 4_000;
const LONGEST = 120_000;
/** s from the beginning of a call */
const TONES = [0, 0.25, 0.5];

export class Alarm {
  /** @type {AudioContext | null} */
  #audio = null;
  /** @type {ReturnType<typeof setInterval> | undefined} */
  #calls;
  #until = 0;

  /** Call on a touch. */
  makeReady() {
    this.#audio ??= new AudioContext();
    if (this.#audio.state !== "running") void this.#audio.resume();
  }

  /** May it sound, or does it wait for a touch? */
  get ready() {
    return this.#audio?.state === "running";
  }

  start() {
    this.#until = Date.now() + LONGEST;
    if (this.#calls !== undefined) return;
    this.#call();
    this.#calls = setInterval(() => (Date.now() < this.#until ? this.#call() : this.stop()), PAUSE);
  }

  stop() {
    clearInterval(this.#calls);
    this.#calls = undefined;
  }

  #call() {
    if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.([300, 150, 300]);
    const audio = this.#audio;
    if (!audio || audio.state !== "running") return;
    for (const at of TONES) {
      const start = audio.currentTime + at;
      const tone = audio.createOscillator();
      const volume = audio.createGain();
      tone.frequency.value = 880;
      // rising and falling softly: a tone cut off sharply clicks
      volume.gain.setValueAtTime(0, start);
      volume.gain.linearRampToValueAtTime(0.6, start + 0.02);
      volume.gain.setValueAtTime(0.6, start + 0.14);
      volume.gain.linearRampToValueAtTime(0, start + 0.18);
      tone.connect(volume).connect(audio.destination);
      tone.start(start);
      tone.stop(start + 0.2);
    }
  }
}
