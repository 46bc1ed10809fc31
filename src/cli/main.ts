import '../text/backRoomEnglish.ts';
import '../text/wholeEnglish.ts';
import '../text/rigsEnglish.ts';
import { runCommand } from './runCommand.ts';

// Set, not exited with, so that everything written is flushed first.
process.exitCode = await runCommand(process.argv.slice(2), { out: console.log, err: console.error });
