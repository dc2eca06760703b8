// Light or dark. Loaded before the page is drawn, so that it never flashes in the wrong one.
(() => {
  const root = document.documentElement;
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const kept = () => { try { return localStorage.getItem('shade'); } catch { return null; } };
  const shade = () => kept() ?? (dark.matches ? 'dark' : 'light');
  const show = () => {
    root.dataset.shade = shade();
    try { root.toggleAttribute('data-sun', localStorage.getItem('setting sun') === 'on'); } catch { /* off */ }
    const button = document.getElementById('shade');
    if (button) button.textContent = shade() === 'dark' ? 'Light paper' : 'Dark paper';
  };
  show();
  dark.addEventListener('change', show);
  document.addEventListener('DOMContentLoaded', () => {
    show();
    document.getElementById('shade')?.addEventListener('click', () => {
      try { localStorage.setItem('shade', shade() === 'dark' ? 'light' : 'dark'); } catch { /* private window: not kept */ }
      show();
    });
  });
})();
