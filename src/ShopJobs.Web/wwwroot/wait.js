// A form that takes some seconds says so, and is not sent twice.
document.addEventListener('submit', event => {
  const form = event.target.closest?.('form[data-wait]');
  if (!form) return;
  if (form.dataset.wait === 'sent') { event.preventDefault(); return; }
  form.dataset.wait = 'sent';
  form.querySelectorAll('[role=status]').forEach(words => { words.hidden = false; });
  form.querySelectorAll('button[type=submit]').forEach(button => { button.disabled = true; });
});
