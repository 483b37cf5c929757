/** A task of its own, as soon as the page's thread is free; what is to be seen sooner may be drawn between. */
export const nextTask = (): Promise<unknown> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve(undefined);
    };
    port2.postMessage(undefined);
  });
