export interface Machine {
  wish(): string | undefined;
  which(name: string): string | undefined;
  runs(program: string): boolean;
  playwrightProgram(): string | undefined;
  download(): boolean;
  isDebianRoot(): boolean;
  aptInstall(): boolean;
  aptUpdate(): boolean;
}

export interface BrowserFound {
  readonly program?: string;
  readonly sentence?: string;
}

export const thisMachine: Machine;
export function findBrowser(machine: Machine, options?: { readonly mayInstall?: boolean }): BrowserFound;
