// A form that takes some seconds says so, and is not sent twice.
document.addEventListener('submit', event => {
  const form = event.target.closest?.('form[data-wait]');
  if (!form) return;
  if (form.dataset.wait === 'sent') { event.preventDefault(); return; }
  form.dataset.wait = 'sent';
  form.querySelectorAll('[role=status]').forEach(words => { words.hidden = false; });
  form.querySelectorAll('button[type=submit]').forEach(button => { button.disabled = true; });
  const bar = form.querySelector('progress');
  if (bar && form.dataset.progress) watch(bar, form.dataset.progress);
});

// How far it is, as long as the server knows; the page goes on by itself when it is done.
async function watch(bar, address) {
  for (;;) {
    await new Promise(done => setTimeout(done, 400));
    const answer = await fetch(address).catch(() => null);
    if (!answer?.ok) continue;
    const { done, of } = await answer.json();
    bar.max = of;
    bar.value = done;
  }
}
