/** Calls back when the colours of the page change; returns what ends it. */
export function onTheme(changed: () => void): () => void {
    const queries = ['(prefers-color-scheme: dark)', '(forced-colors: active)', 'print'].map(
        query => matchMedia(query),
    );
    const watched = new MutationObserver(changed);
    watched.observe(document.documentElement, { attributeFilter: ['data-theme', 'class'] });
    queries.forEach(query => {
        query.addEventListener('change', changed);
    });
    return () => {
        watched.disconnect();
        queries.forEach(query => {
            query.removeEventListener('change', changed);
        });
    };
}
