// Listens to what a page really renders: every sample that goes to the loudspeaker also goes through a worklet that finds where
// tones begin. Put into the page before its own scripts.
(() => {
  const FINDER = `
    const QUIET = 0.004, LOUD = 0.15, PAUSE_S = 0.15;
    registerProcessor("onsets", class extends AudioWorkletProcessor {
      constructor() { super(); this.lastSound = -1; this.begin = -1; this.told = true; }
      process(inputs) {
        const samples = inputs[0][0];
        if (samples === undefined) { return true; }
        for (let i = 0; i < samples.length; i++) {
          const level = Math.abs(samples[i]), frame = currentFrame + i;
          if (level > QUIET) {
            if (frame - this.lastSound > PAUSE_S * sampleRate) { this.begin = frame; this.told = false; }
            this.lastSound = frame;
          }
          if (!this.told && level > LOUD) { this.told = true; this.port.postMessage(this.begin / sampleRate); }
        }
        return true;
      }
    });`;
  const heard = (window.heard = []);       // s on the audio clock, measured in the samples
  const scheduled = (window.scheduled = []); // s on the audio clock, as the page asked for it
  const clocks = (window.clocks = []);     // [page ms, audio s] pairs
  const Native = window.AudioContext;
  window.AudioContext = class extends Native {
    constructor(...given) {
      super(...given);
      const mix = new GainNode(this);
      const connect = AudioNode.prototype.connect;
      const context = this;
      AudioNode.prototype.connect = function (to, ...more) {
        if (to === context.destination && this !== mix) {
          connect.call(this, mix);
        }
        return connect.call(this, to, ...more);
      };
      const module = URL.createObjectURL(new Blob([FINDER], { type: "text/javascript" }));
      this.audioWorklet.addModule(module).then(() => {
        const finder = new AudioWorkletNode(this, "onsets");
        finder.port.onmessage = (event) => heard.push(event.data);
        connect.call(mix, finder);
        connect.call(finder, this.destination);
        window.listening = true;
      }, (reason) => { window.listening = String(reason); });
      setInterval(() => {
        const pair = this.getOutputTimestamp();
        if (pair.performanceTime > 0) { clocks.push([pair.performanceTime, pair.contextTime]); }
      }, 500);
    }
  };
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (when) {
    scheduled.push(when);
    return start.call(this, when);
  };
  // Beside it, in the same run, what a plain interval timer would have done: each cue when a 50 ms timer sees that it is due.
  window.plainTimer = (cues, serverMinusPage) => {
    const plain = (window.plain = []);
    const left = [...cues];
    setInterval(() => {
      const now = performance.now() + serverMinusPage;
      while (left.length > 0 && left[0] <= now) {
        plain.push(now - left.shift());
      }
    }, 50);
  };
})();
