// A photograph is sent in the background, one for each view, while the page is read and drawn again by the server. What is sent is kept
// here until it is recorded: a picture that was not saved is sent again under the same id, and is recorded once.
(() => {
  const jobs = new Map();
  const keyOf = form => `${form.getAttribute('action')} ${form.dataset.photo}`;

  const set = (element, name, value) => { if (element && element[name] !== value) element[name] = value; };

  const draw = form => {
    const job = jobs.get(keyOf(form));
    if (!job) return;
    const progress = form.querySelector('progress');
    set(progress, 'hidden', !job.sending);
    set(progress, 'value', job.part);
    set(form.querySelector('.photo-said'), 'textContent', job.said);
    set(form.querySelector('.photo-again'), 'hidden', !job.again);
    form.classList.toggle('is-sending', job.sending);
    form.classList.toggle('is-refused', job.failed);
  };
  const drawAll = () => { if (jobs.size > 0) document.querySelectorAll('form[data-photo]').forEach(draw); };

  const change = (job, now) => { Object.assign(job, now); drawAll(); };
  const fail = (job, words, again) => change(job, { sending: false, failed: true, again, said: `Not saved: ${words}` });

  const send = job => {
    change(job, { sending: true, failed: false, again: false, part: 0, said: 'Sending' });
    // fetch does not tell how much of a picture has left.
    const request = new XMLHttpRequest();
    request.open('POST', job.address);
    request.setRequestHeader('Accept', 'application/json');
    request.upload.addEventListener('progress', event => {
      if (!event.lengthComputable || !job.sending) return;
      const part = Math.round(100 * event.loaded / event.total);
      change(job, { part, said: part < 100 ? `Sending: ${part} %` : 'Sent. It is being checked.' });
    });
    request.addEventListener('load', () => {
      let answer = null;
      try { answer = JSON.parse(request.responseText); } catch { /* not an answer of this program: said below, with its status */ }
      if (answer?.saved) change(job, { sending: false, again: false, data: null, said: 'Recorded.' });
      else fail(job, answer?.words?.join(' ') ?? `the server answered ${request.status}. Try again.`, answer?.tryAgain ?? true);
    });
    request.addEventListener('error', () => fail(job, "the server can't be reached. The picture is kept on this page: try again.", true));
    request.send(job.data);
  };

  const start = form => {
    const input = form.querySelector('input[type=file]');
    const caption = form.querySelector('input[name=caption]');
    const file = input.files[0];
    if (!file || jobs.get(keyOf(form))?.sending) return;
    const data = new FormData(form);
    data.set('command', crypto.randomUUID());
    const job = { address: form.getAttribute('action'), data, sending: false, failed: false, again: false, part: 0, said: '' };
    jobs.set(keyOf(form), job);
    input.value = '';
    if (file.size > Number(form.dataset.most)) { fail(job, form.dataset.tooLarge, false); return; }
    if (caption) caption.value = '';
    send(job);
  };

  document.addEventListener('change', event => {
    const form = event.target.closest?.('form[data-photo]');
    if (form && event.target.type === 'file') start(form);
  });
  document.addEventListener('submit', event => {
    const form = event.target.closest?.('form[data-photo]');
    if (!form) return;
    event.preventDefault();
    const job = jobs.get(keyOf(form));
    if (job?.again) send(job); else start(form);
  });
  // A picture that was erased, or can't be read: its words stand in for it.
  document.addEventListener('error', event => event.target.closest?.('.photo-picture')?.classList.add('is-gone'), true);
  new MutationObserver(drawAll).observe(document.body, { childList: true, subtree: true });
})();
