// Tells the server that somebody touches this tablet, and locks the tablet when nobody does.
(() => {
  const idle = Number(document.body.dataset.idleMinutes) * 60000;
  const tellEvery = 60000;
  let touched = Date.now();
  let told = Date.now();
  const lock = () => {
    const back = encodeURIComponent(location.pathname + location.search);
    location.assign(`/sign-in?locked=true&returnUrl=${back}`);
  };
  const touch = () => {
    touched = Date.now();
    if (touched - told < tellEvery) return;
    told = touched;
    fetch('/here', { method: 'POST' }).then(answer => { if (answer.status === 401) lock(); },
      () => { told = 0; }); // not reached: the bar at the top says so; tell again at the next touch
  };
  for (const kind of ['pointerdown', 'keydown']) document.addEventListener(kind, touch, { passive: true, capture: true });
  setInterval(() => { if (Date.now() - touched > idle) lock(); }, 5000);
})();
