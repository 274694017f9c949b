using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using BenchSim.Cli.Commands;
using BenchSim.Cli.Terminal;

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
var isDoubleClick = args.Length <= 1 && DoubleClick.IsOne;
var code = CommandLine.Run(
    isDoubleClick ? DoubleClick.Meant(args) : args,
    Console.Out,
    Console.Error,
    terminal: !Console.IsErrorRedirected,
    stop.Token
);
if (isDoubleClick && code != 0)
{
    DoubleClick.WaitToBeRead();
}

return code;
