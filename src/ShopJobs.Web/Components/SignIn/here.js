// Tells the server that somebody touches this tablet, and draws the curtain when nobody does. The server locks by
// itself; the curtain only says so, and keeps what was typed for the same person.
(() => {
  const idle = Number(document.body.dataset.idleMinutes) * 60000;
  const tellEvery = 60000;
  const curtain = document.getElementById('lock');
  const form = curtain.querySelector('form');
  const refusal = document.getElementById('lock-refusal');
  let told = Date.now();

  // One clock for all windows of this tablet.
  const touched = () => Number(localStorage.getItem('touched') ?? 0);
  const touch = () => { if (!curtain.open) localStorage.setItem('touched', String(Date.now())); };
  touch();

  const draw = () => {
    if (curtain.open) return;
    form.reset();
    refusal.hidden = true;
    form.querySelector('[data-lock-return]').value = location.pathname + location.search;
    curtain.showModal();
  };
  const lift = () => {
    curtain.close();
    form.reset();
    touch();
  };

  const tell = async () => {
    told = Date.now();
    try {
      if ((await fetch('/here', { method: 'POST' })).status === 401) draw();
    } catch {
      told = 0; // not reached; the bar at the top says so. Told again at the next round.
    }
  };

  for (const kind of ['pointerdown', 'keydown']) document.addEventListener(kind, touch, { passive: true, capture: true });
  setInterval(() => {
    if (Date.now() - touched() > idle) draw();
    else if (touched() > told && Date.now() - told > tellEvery) tell();
  }, 5000);

  curtain.addEventListener('cancel', event => event.preventDefault());
  form.addEventListener('submit', async event => {
    event.preventDefault();
    let answer;
    try {
      answer = await fetch('/unlock', { method: 'POST', body: new URLSearchParams(new FormData(form)) });
    } catch {
      refusal.textContent = 'No connection to the server. Try again when the line is back; what was typed stays here.';
      refusal.hidden = false;
      return;
    }
    if (answer.status === 204) lift();
    else if (answer.status === 409) form.submit();
    else if (answer.status === 400) location.assign(`/sign-in?returnUrl=${encodeURIComponent(location.pathname + location.search)}`);
    else {
      refusal.textContent = await answer.text();
      refusal.hidden = false;
      form.querySelector('#lock-pin').value = '';
    }
  });
})();
