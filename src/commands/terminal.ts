/** Questions on the terminal. */
import { createInterface } from 'node:readline';

/** Asks line by line; `ask` gives null once the input ends or Ctrl-C is typed. Close it, or the process waits for more. */
export function openTerminal() {
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  const close = () => lines.close();
  lines.on('SIGINT', close);
  process.once('SIGINT', close);
  const typed = lines[Symbol.asyncIterator]();
  return {
    ask: async (prompt: string): Promise<string | null> => {
      lines.setPrompt(prompt);
      lines.prompt();
      const { value, done } = await typed.next();
      return done ? null : value;
    },
    tell: (text: string) => console.log(text),
    close,
  };
}
