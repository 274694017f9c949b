using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using BenchSim.Cli.Commands;

// An environment may ask the runtime for the machine's own culture; numbers and dates must not follow it.
CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
using var stop = new CancellationTokenSource();

// The first signal asks the command to stop and tidy up; a second one ends the program at once.
void Stop(PosixSignalContext signal)
{
    signal.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
}

using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
return CommandLine.Run(args, Console.Out, Console.Error, terminal: !Console.IsErrorRedirected, stop.Token);
