/** Hands the reader a file. */
export function saveBlob(blob: Blob, name: string): void {
    const url = URL.createObjectURL(blob);
    const link = document.createElement('a');
    link.href = url;
    link.download = name;
    link.click();
    // The browser has taken it by the next turn, though it may not have written it yet.
    setTimeout(() => {
        URL.revokeObjectURL(url);
    }, 60_000);
}
