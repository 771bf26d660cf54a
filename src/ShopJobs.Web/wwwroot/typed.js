// What is typed in a form marked data-typed stays on this tablet until it is sent: a reload, or a circuit that is not there yet,
// does not empty it. Fields are kept by their id.
window.shopTyped = (() => {
  const KEY = 'shop.typed.';
  const read = form => localStorage.getItem(KEY + form);
  document.addEventListener('input', event => {
    const form = event.target.closest?.('[data-typed]')?.dataset.typed;
    const box = event.target;
    if (!form || !box.id) return;
    const all = JSON.parse(read(form) ?? '{}');
    all[box.id] = box.type === 'checkbox' ? (box.checked ? 'yes' : '') : box.value;
    // A tablet without room or with storage switched off loses only the second copy; the field itself still holds it.
    try { localStorage.setItem(KEY + form, JSON.stringify(all)); } catch (full) { console.warn(full); }
  });
  return { read, forget: form => localStorage.removeItem(KEY + form) };
})();

// In any other form of a page what was typed comes back after a reload, for the same person on the same page, until it is
// recorded. Ticks do not: what was seen is seen again. PINs are never kept.
(() => {
  const FIELD = 'input:not([type=password], [type=file], [type=checkbox], [type=radio], [type=hidden]), textarea, select';
  const FORM = 'main.page form:not([method=post], [data-typed])';
  const HOURS = 12;
  let sent = null;
  const given = new WeakSet();

  const who = () => document.querySelector('[data-who]')?.dataset.who;
  const key = () => `shop.form.${who()}.${location.pathname}${location.search}`;
  const isKept = field => field.id && field.matches?.(FIELD) && field.closest(FORM) && !field.closest('[data-keypad]');
  const read = () => {
    const kept = JSON.parse(sessionStorage.getItem(key()) ?? 'null');
    return kept && Date.now() - kept.at < HOURS * 3600000 ? kept.fields : {};
  };
  const keep = event => {
    if (!event.isTrusted || !who() || !isKept(event.target)) return;
    given.add(event.target);
    const fields = { ...read(), [event.target.id]: event.target.value };
    try { sessionStorage.setItem(key(), JSON.stringify({ at: Date.now(), fields })); } catch (full) { console.warn(full); }
    sent = null;
  };
  const forget = () => { sessionStorage.removeItem(sent); sent = null; };

  // A field gets its text back once: when its form is shown, or when the page has its line.
  const giveBack = () => {
    if (document.querySelector('main.page.is-asleep') || !who()) return;
    const fields = read();
    for (const [id, value] of Object.entries(fields)) {
      const field = document.getElementById(id);
      if (!field || given.has(field) || !isKept(field)) continue;
      given.add(field);
      if (field === document.activeElement || field.value === value) continue;
      field.value = value;
      for (const kind of ['input', 'change']) field.dispatchEvent(new Event(kind, { bubbles: true }));
    }
  };

  const isSaid = (nodes, kind) => nodes.some(node => (node.nodeType === Node.ELEMENT_NODE ? node : node.parentElement)?.closest(kind)
    || (node.nodeType === Node.ELEMENT_NODE && node.querySelector(kind)));
  document.addEventListener('input', keep);
  document.addEventListener('change', keep);
  document.addEventListener('submit', event => { if (event.target.matches(FORM)) sent = key(); });
  new MutationObserver(changes => {
    const added = changes.flatMap(change => [...change.addedNodes]);
    if (sent && added.length > 0) {
      if (isSaid(added, '.form-wrong, .notice-failed')) sent = null;
      else if (isSaid(added, '.answer-good') || sent !== key()) forget();
    }
    giveBack();
  }).observe(document.documentElement, { childList: true, subtree: true, attributes: true, attributeFilter: ['class'] });
})();
