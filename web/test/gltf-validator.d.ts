declare module 'gltf-validator' {
    export interface Report {
        issues: { numErrors: number; numWarnings: number; messages: unknown[] };
        info: { version: string };
    }
    export function validateBytes(
        data: Uint8Array,
        options?: { format?: 'glb' | 'gltf'; maxIssues?: number },
    ): Promise<Report>;
}
