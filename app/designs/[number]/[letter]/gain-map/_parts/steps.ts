// The steps of work under way, read from a stream of lines.

export interface Step {
  readonly done: number;
  readonly total: number;
  readonly end: 'kept' | 'stopped' | 'failed' | null;
}

/** The lines of an answer as they come; throws the sentence of a refusal, and when the stream breaks off. */
export async function* stepsOf(answer: Response): AsyncGenerator<Step> {
  if (!answer.ok || answer.body === null) throw new Error(await answer.text());
  const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  let ended = false;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    const lines = (rest + value).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) {
      const step: Step = JSON.parse(line);
      ended = step.end !== null;
      yield step;
    }
  }
  if (!ended) throw new Error('The connection broke off. Open the page again.');
}
