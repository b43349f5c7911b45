using System.Runtime.InteropServices;
using Wainwright.Cli;

using var stop = new CancellationTokenSource();

// the first Ctrl+C asks: a search ends with the best so far, the screens close; the second one is the shell's
void Ask(PosixSignalContext signal)
{
    if (stop.IsCancellationRequested) return;
    signal.Cancel = true;
    stop.Cancel();
}
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Ask);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Ask);

return await Wain.Run(args, Terminal.Real(), stop.Token).ConfigureAwait(false);
