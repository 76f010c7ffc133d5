// Writing what a command came to, also when nobody reads on.
import type { Outcome } from './outcome';

/** Prints and returns the exit code once everything is written. */
export async function print({ code, out, err }: Outcome): Promise<number> {
  await write(process.stdout, out);
  await write(process.stderr, err);
  return code;
}

function write(stream: NodeJS.WriteStream, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    // A reader that has seen enough (`| head`) closes the pipe; that is no fault of ours.
    const failed = (error: NodeJS.ErrnoException) => (error.code === 'EPIPE' ? resolve() : reject(error));
    stream.once('error', failed);
    stream.write(text, (error) => {
      if (error !== null && error !== undefined) return failed(error);
      stream.off('error', failed);
      resolve();
    });
  });
}
