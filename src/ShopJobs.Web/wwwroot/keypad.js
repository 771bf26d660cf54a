// Reports what has happened at a car, one report at a time. Every key is kept on this tablet from the first one on, and a report
// keeps its id until the server has answered it: through cut lines, silence, reloads and restarts. No framework, on purpose.
(() => {
  const DRAFT = 'shop.draft.', UNSENT = 'shop.unsent.', SETTING = 'shop.setting.', WITH = 'shop.with.', STEP = 'shop.step.', SAID = 'shop.said', SESSION = 'shop.session';
  const TIMEOUT = 5000, REST = 3000, PAGE_WAIT = 2000, BETWEEN_TAPS = 700, LATE = 2000;
  const at = selector => document.querySelector(selector);
  const page = () => at('[data-step]');
  const keypad = () => at('[data-keypad]');
  const field = () => at('[data-keypad-field]');
  let running = false, resting = false, spoiled = false, wake = () => {}, again = null, seen = null, said = null;
  const leftToOthers = new Set();

  // What is kept on the tablet.
  const keep = (key, value) => {
    try { if (value === null) localStorage.removeItem(key); else localStorage.setItem(key, value); }
    catch { say('ask', ['This tablet cannot keep what you type. Do not leave this page before it says "saved".']); }
  };
  const kept = key => localStorage.getItem(key);
  const keptUnder = prefix => Object.keys(localStorage).filter(key => key.startsWith(prefix));
  const unsent = () => keptUnder(UNSENT).map(key => JSON.parse(kept(key))).sort((a, b) => a.at - b.at);
  const mine = record => record.report.person === at('[data-person]')?.dataset.person;
  const busy = () => running || resting || unsent().some(mine);

  // What is said under the keypad. The element is empty for the page's framework; only this script fills it.
  const say = (kind, lines, buttons = []) => {
    const status = at('[data-cell-status]');
    if (!status) return;
    said = { kind, lines, buttons, on: status, page: location.pathname };
    status.dataset.kind = kind;
    status.setAttribute('role', kind === 'ask' || kind === 'held' ? 'alert' : 'status');
    status.replaceChildren(
      ...lines.map(line => Object.assign(document.createElement('p'), { textContent: line })),
      ...buttons.map(([text, name, value]) => {
        const button = Object.assign(document.createElement('button'), { type: 'button', className: 'button', textContent: text });
        button.dataset[name] = value ?? '';
        return button;
      }));
  };
  // The page may be drawn again around a report that is on its way: what was said is said on the new element.
  const sayAgain = () => {
    if (said && said.page === location.pathname && said.on !== at('[data-cell-status]')) say(said.kind, said.lines, said.buttons);
  };
  const sayUnsent = (record, why, buttons) => say('unsent', [`Not saved: ${record.label}.`, why], buttons);

  const tell = (what, detail) => document.dispatchEvent(new CustomEvent(`shop:${what}`, { detail }));

  // A number with its unit as people write it: 90°, 110 N·m.
  const amount = (text, unit) => unit === '°' ? text + unit : `${text} ${unit}`;

  // Sending.
  const post = async record => {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), TIMEOUT);
    try {
      const response = await fetch('/cells', {
        method: 'POST', headers: { 'Content-Type': 'application/json' }, cache: 'no-store', redirect: 'error', signal: stop.signal,
        body: JSON.stringify({ ...record.report, id: record.id, ...(Date.now() - record.at > LATE ? { late: true } : {}) }),
      });
      const answer = response.headers.get('Content-Type')?.includes('json') ? await response.json() : {};
      return { words: [], ...answer, status: response.status };
    } catch { return { status: 0, words: [] }; } // not reached, or no answer in time: it may have been taken, and is sent again under its id
    finally { clearTimeout(timer); }
  };
  const rest = tries => new Promise(go => { wake = go; setTimeout(go, Math.min(REST, 250 * 2 ** tries)); });

  const flush = async () => {
    if (running || !at('[data-person]')) return;
    running = true;
    tend();
    let tries = 0, record;
    while ((record = unsent().find(one => mine(one) || !leftToOthers.has(one.id)))) {
      if (tries === 0) sayUnsent(record, 'Sending…');
      const answer = await post(record);
      if (answer.status === 0 || answer.status === 429 || answer.status >= 500) {
        if (answer.words[0]) sayUnsent(record, answer.words[0], tries < 3 ? [] : [['Discard it', 'discard', record.id]]);
        else sayUnsent(record, 'No answer from the server. It is kept here and sent again by itself; do not do it twice.');
        await rest(tries++);
        continue;
      }
      tries = 0;
      if (answer.status === 409 && !mine(record)) {
        leftToOthers.add(record.id);
        say('ask', [`Not saved: ${record.label}.`, ...answer.words],
          [...(answer.mayReport ? [['Save it as reported by me', 'forLeaver', record.id]] : []), ['Discard it', 'discard', record.id]]);
      } else if (answer.status === 401) {
        say('ask', [`Not saved: ${record.label}.`, ...answer.words], [['Sign in', 'signIn']]);
        break;
      } else {
        await settle(record, answer);
      }
    }
    running = false;
    tend();
  };

  // The server has answered for good: recorded, or refused for a reason that sending again does not change.
  const settle = async (record, answer) => {
    keep(UNSENT + record.id, null);
    const said = answer.saved
      ? { kind: answer.counts ? 'saved' : 'held', lines: answer.counts ? [`Saved: ${record.label}.`] : [`${record.label}.`, ...answer.words] }
      : { kind: 'ask', lines: [`Not recorded: ${record.label}.`, ...(answer.words.length ? answer.words : ['Load the page again and look at the last record.'])] };
    if (answer.saved && record.draft) {
      keep(record.draft, null);
      if (DRAFT + keypad()?.dataset.cell === record.draft) field().value = '';
    }
    sessionStorage.setItem(SAID, JSON.stringify(said));
    if (!answer.saved || await shows(answer.number)) {
      say(said.kind, said.lines);
      sessionStorage.removeItem(SAID);
      tell('settled', { id: record.id, what: record.report.what, saved: answer.saved === true, words: answer.words, thought: answer.thought });
      return;
    }
    location.reload(); // the page's own line is dead, and the server can be reached
  };
  const shows = async number => {
    for (const until = Date.now() + PAGE_WAIT; Date.now() < until; await new Promise(go => setTimeout(go, 50))) {
      if (Number(page()?.dataset.number ?? Infinity) >= number) return true;
    }
    return false;
  };

  // A glove's second tap is no second report, and no touch on what has come to stand there.
  const pause = () => {
    resting = true;
    setTimeout(() => { resting = false; tend(); }, BETWEEN_TAPS);
  };
  const submit = (report, label, { draft = null, tapped = false, id = crypto.randomUUID() } = {}) => {
    const helpers = [...document.querySelectorAll('[data-with]:checked')].map(box => box.value);
    const made = { ...report, session: kept(SESSION) ?? report.session, ...(helpers.length ? { helpers } : {}) };
    keep(UNSENT + id, JSON.stringify({ id, label, draft, at: Date.now(), report: made }));
    if (tapped) pause();
    flush();
  };

  // The keypad.
  const write = text => {
    field().value = text;
    if (text) keypad().dataset.otherwise = 'yes';
    keep(DRAFT + keypad().dataset.cell, text || null);
    if (text) say('unsent', [`Not saved yet: ${text}. Press ${enterWord()}.`]);
    else if (at('[data-cell-status]')?.dataset.kind === 'unsent') say('', []);
  };
  // A tool has one setting at a time: typed for one stage, it is asked again for every other.
  const settingOf = pad => {
    const [stage, text] = (kept(SETTING + pad.dataset.toolKey) ?? '').split('\n');
    return stage === pad.dataset.settingKey ? text : null;
  };
  const set = (pad, text) => keep(SETTING + pad.dataset.toolKey, text && `${pad.dataset.settingKey}\n${text}`);
  const enterWord = () => keypad().dataset.mode === 'setting' ? 'SET' : 'ENTER';
  const type = key => {
    if (!keypad()) return;
    if (busy()) {
      const record = unsent().find(mine);
      if (record) sayUnsent(record, 'Wait until it is saved: that key was not taken.');
      return;
    }
    if (spoiled && key !== 'back') return;
    spoiled = false;
    const text = field().value;
    if (key === 'back') write(text.slice(0, -1));
    else if (key === '.' || key === ',') { if (text && !/[.,]/.test(text)) write(text + key); }
    else if (text.replace(/\D/g, '').length < 9) write(text + key);
  };
  const spoil = () => {
    if (busy()) return;
    spoiled = true;
    write('');
    say('ask', ['Only digits and one decimal mark are taken, no letters and no sign. Type the whole number again.']);
    clearTimeout(spoil.timer);
    spoil.timer = setTimeout(() => { spoiled = false; }, 1500);
  };
  const ask = (text, lines) => { write(''); again = `${keypad().dataset.cell} ${text}`; say('ask', [...lines, 'Type it again.']); tell('asked'); };

  const doubt = (text, value, guard) => {
    const other = guard.alike.find(one => value >= one.least && value <= one.most);
    if (other) return [`${text} is near ${other.value} ${other.unit}, which is ${guard.target}. Did you mean ${guard.unit}?`];
    if (value < guard.least || value > guard.most) return [`${amount(text, guard.unit)} is far from ${guard.target}.`];
    if (keypad().dataset.mode !== 'setting' && guard.minimum != null && (value < guard.minimum || value > guard.maximum))
      return [`${amount(text, guard.unit)} is outside what is permitted, ${guard.minimum}..${guard.maximum}. Look at the tool again: recorded as it is, it stops this fastener.`];
    return keypad().dataset.mode === 'setting' && Math.abs(value - guard.instructed) > guard.half
      ? [`The step says ${guard.target}. Set the tool to it. A pull at ${text} ${guard.unit} is recorded and held.`] : null;
  };
  const setTo = (pad, text) => {
    set(pad, text);
    write('');
    say('', []);
    pause();
    tend();
  };
  const enter = () => {
    if (busy() || !keypad()) return;
    if (spoiled) { spoiled = false; return; }
    const text = field().value, pad = keypad();
    if (!text) return;
    if (!/^\d+([.,]\d+)?$/.test(text)) { ask(text, [`${text} is not one clear number.`]); return; }
    const guard = JSON.parse(pad.dataset.guard);
    const lines = again === `${pad.dataset.cell} ${text}` ? null : doubt(text, Number(text.replace(',', '.')), guard);
    if (lines) { ask(text, lines); return; }
    again = null;
    if (pad.dataset.mode === 'setting') setTo(pad, text);
    else record(text);
  };
  const record = (text, id) => {
    const { report, label, guard, cell } = keypad().dataset;
    submit({ ...JSON.parse(report), value: text }, `${label}, ${amount(text, JSON.parse(guard).unit)}`, { draft: DRAFT + cell, id });
  };
  const doubtOf = text => doubt(text, Number(text.replace(',', '.')), JSON.parse(keypad().dataset.guard));
  // What a device has read, as if it had been typed: what is asked first, or null where it is on its way.
  const read = (text, { id = crypto.randomUUID(), sure = false }) => {
    const lines = sure ? null : doubtOf(text);
    if (!lines) record(text, id ?? crypto.randomUUID());
    return lines;
  };
  const clicked = () => {
    const pad = keypad(), text = settingOf(pad), guard = JSON.parse(pad.dataset.guard);
    if (!text) return;
    submit({ ...JSON.parse(pad.dataset.report), value: text }, `${pad.dataset.label}, clicked at ${text} ${guard.unit}`, { tapped: true });
    if (Math.abs(Number(text.replace(',', '.')) - guard.instructed) > guard.half) set(pad, null);
  };
  // What takes records away is asked for twice; a glove's double tap is one touch.
  const isAsked = button => {
    for (const other of document.querySelectorAll('[data-asked]')) if (other !== button) delete other.dataset.asked;
    if (!button.hasAttribute('data-twice')) return true;
    const first = Number(button.dataset.asked ?? 0);
    if (!first) button.dataset.asked = Date.now();
    return first > 0 && Date.now() - first > BETWEEN_TAPS;
  };
  const report = button => {
    if (!isAsked(button)) return;
    delete button.dataset.asked;
    const body = JSON.parse(button.dataset.report);
    const choice = button.closest('[data-choice]');
    if (choice && button.hasAttribute('data-chosen')) {
      const numbers = [...choice.querySelectorAll('input:checked')].map(box => Number(box.value));
      body.positions = body.positions.filter(position => numbers.includes(position.number));
      if (!body.positions.length) { say('ask', ['Choose at least one.']); return; }
    }
    const lot = choice?.querySelector('[data-lot]')?.value.trim();
    submit(lot ? { ...body, lot } : body, button.dataset.label, { tapped: true });
  };

  // What the tablet knows, put on the page again: after a reload, and whenever the page is drawn again.
  const tend = () => {
    sayAgain();
    const person = at('[data-person]'), root = page();
    if (person && seen !== location.pathname) { seen = location.pathname; queueMicrotask(arrive); }
    if (!root) return;
    const dead = busy();
    at('[data-settles]')?.toggleAttribute('inert', resting);
    for (const button of document.querySelectorAll('[data-key], [data-keypad-set], [data-keypad-click], [data-keypad-change], button[data-report]')) button.disabled = dead;
    for (const box of document.querySelectorAll('[data-with]')) {
      if (box.dataset.tended) continue;
      box.dataset.tended = 'yes';
      box.checked = (kept(WITH + root.dataset.step) ?? '').includes(box.value);
    }
    const pad = keypad();
    if (!pad) return;
    const setting = pad.dataset.mode === 'setting' ? settingOf(pad) : null;
    pad.dataset.set = setting ? 'yes' : 'no';
    const click = pad.querySelector('[data-keypad-click]'), text = setting && `CLICKED ${setting} ${JSON.parse(pad.dataset.guard).unit}`;
    if (click && text && click.textContent !== text) click.textContent = text;
    if (pad.dataset.tended === pad.dataset.cell) return;
    pad.dataset.tended = pad.dataset.cell;
    const typed = kept(DRAFT + pad.dataset.cell) ?? '';
    field().value = typed;
    if (typed && !running) say('unsent', [`Not saved yet: ${typed}. Press ${enterWord()}.`]);
  };

  // A page came onto the screen: what was said before a reload is said again, and what is unsent is sent.
  const arrive = () => {
    const said = sessionStorage.getItem(SAID);
    sessionStorage.removeItem(SAID);
    if (said) { const { kind, lines } = JSON.parse(said); say(kind, lines); }
    flush();
  };

  const isElsewhere = target => target !== field() && target?.closest?.('input:not([type=checkbox], [type=radio]), textarea, select, [contenteditable="true"], .mud-dialog');
  const ready = () => keypad() && keypad().dataset.set !== 'yes' && !at('.mud-dialog, dialog[open]');
  document.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented || !ready() || isElsewhere(event.target)) return;
    const key = event.key;
    if (key === 'Enter') { if (event.target.closest?.('button, a, summary')) return; event.preventDefault(); enter(); }
    else if (key === 'Backspace') { event.preventDefault(); type('back'); }
    else if (/^[0-9.,]$/.test(key)) { event.preventDefault(); field().focus(); type(key); }
    else if (key.length === 1 && key !== ' ' && event.target === field()) { event.preventDefault(); spoil(); }
  });
  document.addEventListener('input', event => {
    if (event.target === field()) {
      if (busy()) field().value = kept(DRAFT + keypad().dataset.cell) ?? '';
      else if (/[^0-9.,]/.test(field().value)) spoil();
      else write(field().value);
    }
  });
  document.addEventListener('pointerdown', event => { if (event.target.closest?.('[data-key]')) event.preventDefault(); });
  document.addEventListener('click', event => {
    const on = selector => event.target.closest?.(selector);
    const key = on('[data-key]')?.dataset.key;
    if (key) { if (key === 'enter') enter(); else type(key); return; }
    const instructed = on('[data-keypad-set]'); // the tool is set as the step says
    if (instructed) { if (!busy()) { again = null; setTo(keypad(), instructed.dataset.keypadSet); } return; }
    const taken = on('[data-tool-set]'); // taken in hand, and set as the step says: the keypad comes with its setting
    if (taken) { keep(SETTING + taken.dataset.toolSet, taken.dataset.setAs); pause(); return; }
    const jump = on('[data-jump]'); // to the tick or the field that is asked
    if (jump) { const asked = document.getElementById(jump.dataset.jump); asked?.scrollIntoView({ block: 'center' }); asked?.focus({ preventScroll: true }); return; }
    if (on('[data-keypad-otherwise]')) { keypad().dataset.otherwise = 'yes'; return; }
    if (on('[data-keypad-change]')) { set(keypad(), null); tend(); return; }
    if (on('[data-sign-in]')) { location.reload(); return; }
    if (on('[data-last]') && at('[data-cell-status]')?.dataset.kind === 'saved') say('', []); // what was saved last is about to be taken back
    const discard = on('[data-discard]');
    if (discard) {
      if (discard.dataset.sure) { keep(UNSENT + discard.dataset.discard, null); say('', []); wake(); tend(); }
      else { discard.dataset.sure = 'yes'; discard.textContent = 'Discard: it did not happen'; }
      return;
    }
    const leaver = on('[data-for-leaver]');
    if (leaver) { // what somebody did who has left: the lead reports it, and it does not count
      const id = leaver.dataset.forLeaver, record = JSON.parse(kept(UNSENT + id));
      keep(UNSENT + id, JSON.stringify({ ...record, report: { ...record.report, forLeaver: true } }));
      leftToOthers.delete(id);
      flush();
      return;
    }
    const button = on('[data-keypad-click], button[data-report]');
    if (!button || busy()) { if (!button) for (const asked of document.querySelectorAll('[data-asked]')) delete asked.dataset.asked; return; }
    if (button.matches('[data-keypad-click]')) clicked(); else report(button);
  });

  // Ticks and values of the step stay on the tablet too; the page asks for them when it is drawn.
  const stepDraft = () => STEP + page().dataset.person + page().dataset.step + (page().dataset.redone ?? '');
  document.addEventListener('change', event => {
    const box = event.target.closest?.('[data-with], [data-draft]');
    if (!box || !page()) return;
    if (box.matches('[data-with]')) {
      keep(WITH + page().dataset.step, [...document.querySelectorAll('[data-with]:checked')].map(one => one.value).join(' '));
      return;
    }
    const all = JSON.parse(kept(stepDraft()) ?? '{}');
    all[box.dataset.draft] = box.type === 'checkbox' ? (box.checked ? 'yes' : '') : box.value;
    keep(stepDraft(), JSON.stringify(all));
  });
  at('#components-reconnect-modal')?.addEventListener('components-reconnect-state-changed', event => {
    if (event.detail.state !== 'hide') return;
    for (const box of document.querySelectorAll('[data-draft]')) box.dispatchEvent(new Event('change', { bubbles: true }));
    wake();
  });
  at('#lock')?.addEventListener('close', () => flush());
  window.addEventListener('online', () => wake());
  window.shopStep = {
    drafts: () => kept(stepDraft()) ?? '{}',
    look: () => requestAnimationFrame(() => at('[data-answer]')?.scrollIntoView({ block: 'center' })),
    keypad: { busy, doubt: doubtOf, read, standing: () => keypad() && { cell: keypad().dataset.cell, label: keypad().dataset.label } },
    told: (kind, lines) => say(kind, lines), // what was said of a record gives way to what became of it
    forget: () => keep(stepDraft(), null),
    note: (name, value) => {
      const address = new URL(location.href);
      address.searchParams.set(name, value);
      history.replaceState(history.state, '', address);
    },
  };

  // The session of now, also for a page of this tablet that was left open from an earlier one.
  if (document.body.dataset.session) keep(SESSION, document.body.dataset.session);
  new MutationObserver(tend).observe(document.documentElement, { childList: true, subtree: true, attributes: true, attributeFilter: ['data-cell', 'data-setting-key', 'data-step'] });
  tend();
})();
