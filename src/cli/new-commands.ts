// Names the commands that make new files, with their options; what they do stands in new.ts.
import { Option, type Command } from 'commander';
import { usualClubs } from '../analysis/new-student.ts';
import {
  newPracticeCommand,
  newRecordCommand,
  newStudentCommand,
  type RecordOptions,
  type StudentOptions,
} from './new.ts';

export function addNewCommands(
  program: Command,
  nonEmpty: (value: string) => string,
  signal: AbortSignal,
): void {
  const fresh = program
    .command('new')
    .description(
      'make a practice folder, a student or the next record; nothing that is there is written over',
    );

  fresh
    .command('practice')
    .description('make the settings, templates and fault book of a practice')
    .argument('[folder]', 'where', '.')
    .option('--name <name>', "the practice's name; that of the folder if left out")
    .action(async (folder: string, options: { name?: string }) => {
      process.exitCode = await newPracticeCommand(folder, options.name);
    });

  fresh
    .command('student')
    .description("make a student's file")
    .argument('<name>', 'what the student is called')
    .addOption(
      new Option('--hand <hand>', 'the hand that the student plays with')
        .choices(['left', 'right'])
        .default('right'),
    )
    .option('--stature <length>', 'how tall, such as "171 cm"')
    .option('--born <day>', 'date of birth, or only the year; records of minors bring a reminder')
    .option('--club <names...>', 'clubs of the bag', [...usualClubs])
    .option('--injury <parts...>', 'parts of the body to be careful with, in plain words; no diagnosis', [])
    .option('--in <folder>', "the practice's folder", '.')
    .action(async (name: string, options: StudentOptions) => {
      process.exitCode = await newStudentCommand(name, options);
    });

  fresh
    .command('record')
    .description('make the next record of a student, with what stays from lesson to lesson')
    .argument('<file>', "the student's file", nonEmpty)
    .option('--date <day>', 'the day of the lesson; today if left out', today())
    .option('--club <name>', 'a club from the bag; that of the last lesson if left out')
    .action(async (file: string, options: RecordOptions) => {
      process.exitCode = await newRecordCommand(file, options, signal);
    });
}

/** Of this machine's calendar. */
function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
