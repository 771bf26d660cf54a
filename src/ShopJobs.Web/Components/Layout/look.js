// Light or dark, remembered on this tablet; without a choice the system decides. Runs before the page is drawn.
window.shopLook = (() => {
  const system = window.matchMedia('(prefers-color-scheme: dark)');
  const chosen = () => localStorage.getItem('look');
  const wanted = () => chosen() ?? (system.matches ? 'dark' : 'light');
  const show = () => {
    document.documentElement.dataset.look = wanted();
    document.cookie = `look=${wanted()}; path=/; max-age=31536000; samesite=strict`;
  };
  system.addEventListener('change', show);
  show();
  return {
    shown: () => wanted(),
    choose: look => { localStorage.setItem('look', look); show(); },
  };
})();
