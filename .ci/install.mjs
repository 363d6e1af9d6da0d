/**
 * Installs the packages if node_modules is missing or is not what package-lock.json names.
 * Plain Node 20 and nothing else: it runs before any package is there.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

const root = new URL('../', import.meta.url);

/** The packages a lock file names, by folder; none if the file is missing or damaged. */
const packagesIn = (file) => {
  try {
    return JSON.parse(readFileSync(new URL(file, root), 'utf8')).packages ?? {};
  } catch {
    return {};
  }
};

/** True if every package of the lock file is installed in that very version. Optional ones belong to other systems. */
const upToDate = () => {
  const installed = packagesIn('node_modules/.package-lock.json');
  return Object.entries(packagesIn('package-lock.json')).every(
    ([folder, wanted]) =>
      folder === '' ||
      (installed[folder]
        ? installed[folder].version === wanted.version && installed[folder].integrity === wanted.integrity
        : wanted.optional === true),
  );
};

if (!existsSync(new URL('package-lock.json', root))) {
  console.error('package-lock.json is missing: get it back from the repository.');
  process.exit(1);
}
if (!upToDate()) {
  console.log('Installing packages (npm ci) …');
  // One string and a shell, so that npm is found on Windows too, where it is a .cmd file.
  const { status } = spawnSync('npm ci --no-audit --no-fund', { cwd: root, stdio: 'inherit', shell: true });
  if (status !== 0) {
    console.error('The packages could not be installed. Stop programs that use them, then run: npm ci');
    process.exit(1);
  }
}
