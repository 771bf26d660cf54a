// Devices at a step: a wrench or a scanner that types, and readings that a tool sends through the server. What they say goes the way of
// the keypad (keypad.js). What cannot be taken at once is kept on this tablet and asked beside the keypad, one thing at a time.
(() => {
  const PENDING = 'shop.device.asked', DONE = 'shop.device.done', MUTED = 'shop.muted';
  const PATIENCE = 4000, UNFINISHED = 3000, READ = 60000, REMEMBERED = 50;
  const at = selector => document.querySelector(selector);
  const keypad = () => window.shopStep.keypad;
  const page = () => at('[data-step]');
  const readingPad = () => at('[data-keypad][data-mode="reading"]');
  const inDialog = () => at('.mud-dialog, dialog[open]');
  const list = key => JSON.parse(localStorage.getItem(key) ?? '[]');
  const pending = () => list(PENDING);
  const keep = (key, all) => localStorage.setItem(key, JSON.stringify(all));
  const remember = (id, outcome, words) => { if (id) keep(DONE, [...list(DONE).filter(one => one.id !== id), { id, outcome, words }].slice(-REMEMBERED)); };
  let line = null, listener = null; // the page's own line to the server

  // One tone each: in range, go on, look at the screen, held. Pitch in Hz and length in seconds; 0 Hz is a pause.
  const TONES = {
    'in-range': [[1320, .12]],
    'go-on': [[880, .1], [1320, .18]],
    look: [[620, .1], [0, .07], [620, .1]],
    held: [[330, .2], [220, .45]],
  };
  let audio = null;
  const isMuted = () => localStorage.getItem(MUTED) === 'yes';
  const sound = name => {
    if (isMuted() || !TONES[name]) return;
    audio ??= new AudioContext();
    if (audio.state === 'suspended') audio.resume();
    let when = audio.currentTime;
    for (const [pitch, length] of TONES[name]) {
      if (pitch) {
        const tone = audio.createOscillator(), level = audio.createGain();
        tone.type = name === 'held' ? 'square' : 'sine';
        tone.frequency.value = pitch;
        level.gain.setValueAtTime(0.0001, when);
        level.gain.exponentialRampToValueAtTime(0.25, when + 0.01);
        level.gain.exponentialRampToValueAtTime(0.0001, when + length);
        tone.connect(level).connect(audio.destination);
        tone.start(when);
        tone.stop(when + length);
      }
      when += length;
    }
  };
  const showMuted = () => {
    document.documentElement.toggleAttribute('data-muted', isMuted());
    at('[data-device-sound]')?.setAttribute('aria-pressed', isMuted() ? 'false' : 'true');
  };
  document.addEventListener('shop:settled', event => {
    const { id, what, saved, words } = event.detail;
    remember(id, saved ? 'settled' : 'refused', words);
    if (what === 'Pull') sound(saved ? at('[data-pull-sign]')?.dataset.pullSign : 'look');
    draw();
  });
  document.addEventListener('shop:asked', () => sound('look'));

  // A word to the one person at this tablet: gone when it is read, when the tablet is left or locked, or by itself. Kept nowhere.
  const think = text => {
    const word = Object.assign(document.createElement('aside'), { className: 'private-word' });
    word.setAttribute('role', 'status');
    const button = Object.assign(document.createElement('button'), { type: 'button', className: 'button', textContent: 'I have read it' });
    button.addEventListener('click', () => word.remove());
    at('.private-word')?.remove();
    document.body.append(word);
    word.append(Object.assign(document.createElement('p'), { textContent: text }), button);
    setTimeout(() => word.remove(), READ);
    const gone = new MutationObserver(() => { if (at('#lock[open]') || !page()) { gone.disconnect(); word.remove(); } });
    gone.observe(document.documentElement, { childList: true, subtree: true, attributes: true, attributeFilter: ['open', 'data-step'] });
  };
  document.addEventListener('shop:settled', event => { if (event.detail.thought) think(event.detail.thought); });

  // What is asked.
  const words = item => `${item.text} ${item.unit}`.replace(' °', '°');
  const isHere = item => page()?.dataset.step === item.step && page().dataset.person === item.person;
  const question = item => {
    const pad = isHere(item) && readingPad(), leave = ['Leave it out', 'leave'];
    if (!pad) return { lines: [`${words(item)} came for ${item.label || 'a step'} and is not recorded. No pull is next here that it could be.`], buttons: [leave] };
    const { label, cell } = keypad().standing() ?? {}, unit = JSON.parse(pad.dataset.guard).unit;
    if (!cell || unit !== item.unit || (item.tool && item.tool !== JSON.parse(pad.dataset.report).tool))
      return { lines: [`${words(item)} came and is not recorded: it is not of what is next.`], buttons: [leave] };
    const doubt = keypad().doubt(item.text) ?? [];
    return item.cell === cell
      ? { lines: doubt, buttons: [[`Record ${words(item)} as it is`, 'take'], leave] }
      : { lines: [`${words(item)} came before ${label} was next, and is not recorded.`, ...doubt, 'Was it pulled on this one?'], buttons: [[`Yes: ${words(item)} at ${label}`, 'take'], leave] };
  };
  const draw = () => {
    showMuted();
    const place = at('[data-device-asked]'), item = pending()[0];
    if (!place) return;
    const asked = item && !(isHere(item) && keypad().busy()) ? question(item) : null;
    const drawn = asked ? JSON.stringify([item.key, asked]) : '';
    if (place.dataset.drawn === drawn) return;
    place.dataset.drawn = drawn;
    place.replaceChildren(...(asked ? [
      ...asked.lines.map(text => Object.assign(document.createElement('p'), { textContent: text })),
      ...asked.buttons.map(([text, act]) => {
        const button = Object.assign(document.createElement('button'), { type: 'button', className: 'button', textContent: text });
        button.dataset.deviceAct = act;
        button.dataset.deviceKey = item.key;
        return button;
      })] : []));
  };
  const put = (text, { id = null, cell = null, tool = null }) => {
    const pad = readingPad();
    keep(PENDING, [...pending(), {
      key: crypto.randomUUID(), text, id, cell, tool, unit: pad ? JSON.parse(pad.dataset.guard).unit : '', label: pad?.dataset.label ?? '',
      step: page()?.dataset.step, person: page()?.dataset.person }]);
    draw();
  };
  document.addEventListener('click', event => {
    const button = event.target.closest?.('[data-device-act]');
    if (at('[data-device-sound]')?.contains(event.target)) { localStorage.setItem(MUTED, isMuted() ? 'no' : 'yes'); showMuted(); sound('in-range'); return; }
    if (!button) return;
    const item = pending().find(one => one.key === button.dataset.deviceKey);
    if (!item || keypad().busy()) return;
    keep(PENDING, pending().filter(one => one.key !== item.key));
    if (button.dataset.deviceAct === 'take') keypad().read(item.text, { id: item.id, sure: true });
    else remember(item.id, 'refused', ['It was left out at the tablet.']);
    draw();
  });

  // A reading that a tool sent: taken, asked or refused, the same for the same id however often it comes.
  const refused = text => ({ outcome: 'refused', words: [text] });
  const settled = id => new Promise(done => {
    const answer = () => { const one = list(DONE).find(other => other.id === id); if (one) stop(one); };
    const stop = one => { document.removeEventListener('shop:settled', answer); clearTimeout(timer); done(one ?? { outcome: 'waiting', words: ['It is kept on the tablet and is on its way.'] }); };
    const timer = setTimeout(() => stop(null), PATIENCE);
    document.addEventListener('shop:settled', answer);
    answer();
  });
  const offer = async ({ id, value, degrees, tool }) => {
    const known = list(DONE).find(one => one.id === id);
    if (known) return { outcome: known.outcome, words: known.words };
    if (pending().some(one => one.id === id)) return { outcome: 'waiting', words: ['It is asked at the tablet.'] };
    if (localStorage.getItem(`shop.unsent.${id}`) !== null) return settled(id);
    if (document.visibilityState !== 'visible') return { outcome: 'away', words: [] };
    if (at('#lock[open]')) return refused('The tablet is locked. Whoever works there signs in; then send it again.');
    const pad = readingPad();
    if (!pad || JSON.parse(pad.dataset.report).tool !== tool) return { outcome: 'away', words: [] };
    const text = JSON.parse(pad.dataset.guard).unit === '°' ? degrees : value;
    if (text === null) return refused('This stage asks for the angle turned, and the reading has none.');
    if (keypad().busy() || pending().length > 0 || inDialog()) {
      put(text, { id, tool, cell: keypad().busy() ? null : keypad().standing()?.cell });
      sound('look');
      return { outcome: 'waiting', words: ['It is kept on the tablet and asked there.'] };
    }
    const doubt = keypad().read(text, { id });
    if (!doubt) return settled(id);
    put(text, { id, tool, cell: keypad().standing().cell });
    sound('look');
    return { outcome: 'waiting', words: [...doubt, 'It is asked at the tablet.'] };
  };

  // What a wrench or a scanner types. A label begins with its letter; a reading that comes while the one before it is on its way is kept whole.
  let begun = null, timer = null;
  const isWritten = target => target?.closest?.('input:not([type=checkbox], [type=radio], [data-keypad-field]), textarea, select, [contenteditable="true"]');
  const end = () => { const text = begun; begun = null; clearTimeout(timer); return text; };
  const finish = () => {
    const text = end();
    if (text[0] === 'T') takeLabel(text);
    else if (/^\d+([.,]\d+)?$/.test(text)) { put(text, {}); sound('look'); }
    else window.shopStep.told('ask', [`${text} is not one clear number and was not taken.`]);
  };
  const takeLabel = async label => {
    if (!/^T\d{8}$/.test(label)) { window.shopStep.told('ask', [`${label} is no whole tool label. Scan it again, or choose the tool by hand.`]); sound('look'); return; }
    for (const until = Date.now() + PATIENCE; !line && Date.now() < until;) await new Promise(go => setTimeout(go, 50)); // the page has just come
    if (!line) { window.shopStep.told('ask', ['No pull is next here, so no tool is taken.']); return; }
    try {
      const { taken, words: said } = await Promise.race([line.invokeMethodAsync('TakeLabelAsync', label), new Promise((_, late) => setTimeout(late, PATIENCE))]);
      window.shopStep.told(taken ? 'saved' : 'ask', [said]);
      if (!taken) sound('look');
    } catch { window.shopStep.told('ask', ['The label could not be looked up: no line to the server. Scan it again.']); }
  };
  window.addEventListener('keydown', event => {
    const key = event.key;
    if (!page() || inDialog() || event.ctrlKey || event.metaKey || event.altKey || isWritten(event.target)) return;
    const isDigit = /^[0-9.,]$/.test(key);
    const begins = begun === null && (key === 't' || key === 'T' || (isDigit && readingPad() && keypad().busy()));
    if (begun === null && !begins) return;
    if (key === 'Shift') return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (key === 'Enter') { finish(); return; }
    if (key.length === 1) begun = (begun ?? '') + key.toUpperCase();
    clearTimeout(timer);
    timer = setTimeout(finish, UNFINISHED);
  }, true);

  window.shopDevice = {
    offer,
    think,
    listen: (reference, token) => { line = reference; listener = token; draw(); },
    leave: token => { if (token === listener) line = null; },
    listens: () => line !== null,
  };
  new MutationObserver(draw).observe(document.documentElement, { childList: true, subtree: true, attributes: true, attributeFilter: ['data-cell', 'data-step', 'disabled'] });
  draw();
})();
