// Reports what has happened at a car, one report at a time. Every key is kept on this tablet from the first one on, and a report
// keeps its id until the server has answered it: through cut lines, silence, reloads and restarts. While there is no line the pulls of a
// stage go on in its order, each kept with its cycle; the server judges them in that order when it is back. No framework, on purpose.
(() => {
  const DRAFT = 'shop.draft.', UNSENT = 'shop.unsent.', SETTING = 'shop.setting.', WITH = 'shop.with.', STEP = 'shop.step.', SAID = 'shop.said', NEWEST = 'shop.newest.', SESSION = 'shop.session';
  const TIMEOUT = 5000, REST = 3000, PAGE_WAIT = 2000, BETWEEN_TAPS = 700, OTHER_TAB = 6000, LATE = 2000;
  const at = selector => document.querySelector(selector);
  const page = () => at('[data-step]');
  const keypad = () => at('[data-keypad]');
  const field = () => at('[data-keypad-field]');
  let running = false, resting = false, spoiled = false, without = false, silent = false, wake = () => {}, again = null, seen = null, said = null;
  const leftToOthers = new Set(), answered = new Set();

  // What is kept on the tablet.
  const keep = (key, value) => {
    try { if (value === null) localStorage.removeItem(key); else localStorage.setItem(key, value); }
    catch { say('ask', ['This tablet cannot keep what you type. Do not leave this page before it says "saved".']); }
  };
  const kept = key => localStorage.getItem(key);
  const keptUnder = prefix => Object.keys(localStorage).filter(key => key.startsWith(prefix));
  const unsent = () => keptUnder(UNSENT).map(key => JSON.parse(kept(key))).sort((a, b) => a.at - b.at);
  const mine = record => record.report.person === at('[data-person]')?.dataset.person;

  // The cell that is pulled now: the page's own, or without the line the first one after it that nothing is kept for. Null where there is none.
  const cells = () => {
    const { cell, label, report, ahead } = keypad().dataset;
    const own = JSON.parse(report);
    return [{ cell, label, report: own }, ...JSON.parse(ahead).map(one => ({ ...one, report: { ...own, ...one.report } }))];
  };
  const standing = () => {
    if (!keypad()) return null;
    if (!without) return cells()[0];
    const done = new Set([...unsent().filter(mine).map(record => record.cell), ...answered]);
    return cells().find(one => !done.has(one.cell)) ?? null;
  };
  // Nothing is pulled on over a report that is no pull, or that the server will stop the joint for.
  const goesOn = () => silent && unsent().filter(mine).every(record => record.cell && !record.stops) && standing() !== null;
  const waits = () => resting || running || unsent().some(mine);
  const busy = () => resting || (waits() && !goesOn());

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
  const sayWithout = () => {
    if (again !== null && said?.kind === 'ask') return; // what was asked stays until it is answered
    const waiting = unsent().filter(mine), typed = field()?.value, next = standing();
    say('unsent', [
      ...waiting.map(record => `Not saved: ${record.label}.`),
      `No answer from the server. ${waiting.length > 1 ? 'They are kept here and sent again by themselves in this order' : 'It is kept here and sent again by itself'}; do not do it twice.`,
      ...(!keypad() || !waiting.some(record => record.cell) ? [] : typed && !busy() ? [`Not saved yet: ${typed}. Press ${enterWord()}.`]
        : goesOn() ? [`Go on with ${next.label}.`] : next ? ['Wait for the line before the next one.'] : ['That was the last one of this stage. Wait for the line.'])]);
  };

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
    let tries = 0, toldOthers = null, record;
    while ((record = unsent().find(one => mine(one) || !leftToOthers.has(one.id)))) {
      if (tries === 0 && !without) sayUnsent(record, 'Sending…');
      const answer = await post(record);
      if (answer.status === 0 || answer.status === 429 || answer.status >= 500) {
        silent = answer.status === 0;
        without ||= silent;
        tend();
        if (answer.words[0]) sayUnsent(record, answer.words[0], tries < 3 ? [] : [['Discard it', 'discard', record.id]]);
        else if (mine(record)) sayWithout();
        else sayUnsent(record, 'No answer from the server. It is kept here and sent again by itself; do not do it twice.');
        await rest(tries++);
        continue;
      }
      tries = 0;
      silent = false;
      tend();
      if (answer.status === 409 && !mine(record)) {
        leftToOthers.add(record.id);
        toldOthers = [[`Not saved: ${record.label}.`, ...answer.words],
          [...(answer.mayReport ? [['Save it as reported by me', 'forLeaver', record.id]] : []), ['Discard it', 'discard', record.id]]];
        say('ask', ...toldOthers);
      } else if (answer.status === 401) {
        toldOthers = [[`Not saved: ${record.label}.`, ...answer.words], [['Sign in', 'signIn']]];
        say('ask', ...toldOthers);
        break;
      } else {
        settle(record, answer);
      }
    }
    if (settled().length > 0 || without) await tellSettled(toldOthers);
    answered.clear();
    running = without = false;
    tend();
  };

  // The server has answered for good: recorded, or refused for a reason that sending again does not change. What it said is kept
  // until all of them are answered, and told together: first what does not hold.
  const settle = (record, answer) => {
    const typed = record.draft && DRAFT + standing()?.cell === record.draft;
    keep(UNSENT + record.id, null);
    if (record.cell) answered.add(record.cell);
    if (answer.saved && record.draft) {
      keep(record.draft, null);
      if (typed) field().value = '';
    }
    const told = answer.saved
      ? { kind: answer.counts ? 'saved' : 'held', lines: answer.counts ? [`Saved: ${record.label}.`] : [`${record.label}.`, ...answer.words] }
      : { kind: 'ask', lines: [`Not recorded: ${record.label}.`, ...(answer.words.length ? answer.words : ['Load the page again and look at the last record.'])] };
    if (answer.saved) keep(NEWEST + record.report.car, String(answer.number));
    sessionStorage.setItem(SAID, JSON.stringify([...settled(), {
      ...told, waits: answer.saved && record.report.car, id: record.id, what: record.report.what, saved: answer.saved === true, words: answer.words, thought: answer.thought,
    }]));
  };
  const settled = () => JSON.parse(sessionStorage.getItem(SAID) ?? '[]');
  const RANK = ['ask', 'held', 'saved'];
  const tellSettled = async toldOthers => {
    const all = settled().sort((a, b) => RANK.indexOf(a.kind) - RANK.indexOf(b.kind)), car = page()?.dataset.step.split('/')[0];
    // The page goes on from what is recorded now; where its own line is dead it is loaded again, and the server can be reached.
    const records = all.filter(one => one.waits === car).length > 0 || all.length === 0;
    if (car && records && !all.some(one => one.wasShown) && !await shows(Number(kept(NEWEST + car) ?? 0))) {
      sessionStorage.setItem(SAID, JSON.stringify(all.map(one => ({ ...one, wasShown: true }))));
      location.reload();
      return;
    }
    sessionStorage.removeItem(SAID);
    const lines = all.flatMap(one => one.lines);
    if (toldOthers) say('ask', [...toldOthers[0], ...lines], toldOthers[1]);
    else if (all.length > 0) say(all[0].kind, lines);
    else say('', []);
    for (const { id, what, saved, words, thought } of all) tell('settled', { id, what, saved, words, thought });
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
    setTimeout(() => { resting = false; tend(); if (goesOn()) sayWithout(); }, BETWEEN_TAPS);
  };
  const submit = (report, label, { draft = null, tapped = false, cell = null, stops = false, id = crypto.randomUUID() } = {}) => {
    const at = Math.max(Date.now(), ...unsent().map(record => record.at + 1)); // in their order, whatever the clock does
    const helpers = [...document.querySelectorAll('[data-with]:checked')].map(box => box.value);
    const made = { ...report, session: kept(SESSION) ?? report.session, ...(helpers.length ? { helpers } : {}) };
    keep(UNSENT + id, JSON.stringify({ id, label, draft, cell, stops, at, report: made }));
    if (tapped) pause();
    if (running) { tend(); sayWithout(); } // without the line: it waits behind the others
    flush();
  };

  // The keypad.
  const write = text => {
    field().value = text;
    if (text) keypad().dataset.otherwise = 'yes';
    keep(DRAFT + standing().cell, text || null);
    if (silent && unsent().some(mine)) sayWithout();
    else if (text) say('unsent', [`Not saved yet: ${text}. Press ${enterWord()}.`]);
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
  const ask = (text, lines) => { write(''); again = `${standing().cell} ${text}`; say('ask', [...lines, 'Type it again.']); tell('asked'); };

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
    const guard = JSON.parse(pad.dataset.guard), at = standing();
    const lines = again === `${at.cell} ${text}` ? null : doubt(text, Number(text.replace(',', '.')), guard);
    if (lines) { ask(text, lines); return; }
    again = null;
    if (pad.dataset.mode === 'setting') setTo(pad, text);
    else record(text);
  };
  const record = (text, id) => {
    const guard = JSON.parse(keypad().dataset.guard), at = standing(), value = Number(text.replace(',', '.'));
    const stops = guard.minimum != null && (value < guard.minimum || value > guard.maximum);
    submit({ ...at.report, value: text }, `${at.label}, ${amount(text, guard.unit)}`, { draft: DRAFT + at.cell, cell: at.cell, stops, id });
  };
  const doubtOf = text => doubt(text, Number(text.replace(',', '.')), JSON.parse(keypad().dataset.guard));
  // What a device has read, as if it had been typed: what is asked first, or null where it is on its way.
  const read = (text, { id = crypto.randomUUID(), sure = false }) => {
    const lines = sure ? null : doubtOf(text);
    if (!lines) record(text, id ?? crypto.randomUUID());
    return lines;
  };
  const clicked = () => {
    const pad = keypad(), text = settingOf(pad), guard = JSON.parse(pad.dataset.guard), at = standing();
    if (!text) return;
    const stops = Math.abs(Number(text.replace(',', '.')) - guard.instructed) > guard.half;
    submit({ ...at.report, value: text }, `${at.label}, clicked at ${text} ${guard.unit}`, { tapped: true, cell: at.cell, stops });
    if (stops) set(pad, null);
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
    for (const button of document.querySelectorAll('[data-key], [data-keypad-set], [data-keypad-click], [data-keypad-change]')) button.disabled = dead;
    for (const button of document.querySelectorAll('button[data-report]')) button.disabled = waits();
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
    const next = standing();
    showNext(pad, next);
    if (pad.dataset.tended === (next?.cell ?? '')) return;
    pad.dataset.tended = next?.cell ?? '';
    const typed = next && kept(DRAFT + next.cell) || '';
    field().value = typed;
    if (typed && !running) say('unsent', [`Not saved yet: ${typed}. Press ${enterWord()}.`]);
  };

  // Without the line the page cannot draw which one is next: it is named above the keys and outlined in the picture.
  const showNext = (pad, next) => {
    const isOwn = next?.cell === pad.dataset.cell, words = pad.querySelector('[data-keypad-ahead]');
    const ahead = isOwn ? '' : next?.label ?? 'No more without the line';
    if (words.textContent !== ahead) words.textContent = ahead;
    page().toggleAttribute('data-goes-on', !isOwn);
    for (const nut of document.querySelectorAll('[data-ahead-nut]')) nut.toggleAttribute('data-is-ahead', !isOwn && nut.dataset.aheadNut === String(next?.number));
  };

  // A page came onto the screen: what is unsent is sent, and what was answered before a reload is said again.
  const arrive = () => flush();

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
      if (busy()) field().value = standing() && kept(DRAFT + standing().cell) || '';
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
    if (!button || (button.matches('[data-keypad-click]') ? busy() : waits())) { if (!button) for (const asked of document.querySelectorAll('[data-asked]')) delete asked.dataset.asked; return; }
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
  // Another page of this tablet reports too: this one waits for its answer, comes alive with it, and sends it itself where that page is gone.
  window.addEventListener('storage', event => {
    if (!event.key?.startsWith(UNSENT)) return;
    tend();
    clearTimeout(flush.timer);
    if (unsent().some(mine)) flush.timer = setTimeout(flush, OTHER_TAB);
  });
  window.shopStep = {
    drafts: () => kept(stepDraft()) ?? '{}',
    look: () => requestAnimationFrame(() => at('[data-answer]')?.scrollIntoView({ block: 'center' })),
    keypad: { busy, doubt: doubtOf, read, standing },
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
