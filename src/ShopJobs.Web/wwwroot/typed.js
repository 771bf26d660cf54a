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
