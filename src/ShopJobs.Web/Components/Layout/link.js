// The line to the server: says when it is down, never gives up, and never covers the page.
(() => {
  const bar = document.getElementById('components-reconnect-modal');
  let checking = false;
  const say = text => { bar.textContent = text; bar.classList.toggle('is-shown', text !== ''); };

  // The page is loaded again only when the server has answered: never into an error page of the browser.
  const answer = async () => {
    try { return (await fetch('/here', { cache: 'no-store' })).status; } catch { return 0; }
  };
  const watch = async () => {
    if (checking) return;
    checking = true;
    while (bar.classList.contains('is-shown')) {
      await new Promise(wake => setTimeout(wake, 3000));
      if (await answer() === 401) { location.reload(); return; }
    }
    checking = false;
  };
  const reloadWhenReached = async () => {
    say('The server has started again. Loading the page.');
    while (await answer() === 0) await new Promise(wake => setTimeout(wake, 3000));
    location.reload();
  };

  bar.addEventListener('components-reconnect-state-changed', event => {
    switch (event.detail.state) {
      case 'show':
      case 'retrying':
        say('No connection to the server. Stay on this page; it goes on by itself when the line is back.');
        watch();
        break;
      case 'hide':
        say('');
        break;
      case 'failed':
      case 'rejected':
      case 'resume-failed':
        reloadWhenReached();
        break;
    }
  });
  // Back, before the page has its line: the page is loaded whole, as by a link.
  addEventListener('popstate', event => {
    if (!document.querySelector('main.page.is-asleep')) return;
    event.stopImmediatePropagation();
    location.reload();
  });
  Blazor.start({
    circuit: {
      reconnectionOptions: {
        maxRetries: Number.MAX_SAFE_INTEGER,
        retryIntervalMilliseconds: attempt => attempt < 5 ? 1000 : 3000,
      },
    },
  });
})();
