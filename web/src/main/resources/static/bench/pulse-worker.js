// The worker of pulse.js: nothing but a beat.

onmessage = (event) => {
  setInterval(() => postMessage(null), event.data);
};
