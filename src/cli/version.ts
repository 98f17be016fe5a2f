// The version that package.json gives, in one place for every command.
import manifest from '../../package.json' with { type: 'json' };

export const version: string = manifest.version;
