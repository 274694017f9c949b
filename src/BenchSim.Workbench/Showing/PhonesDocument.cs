using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Report.Labels;
using BenchSim.Workbench.Phones;

namespace BenchSim.Workbench.Showing;

/// <summary>A paired phone.</summary>
internal sealed record PhoneDocument(string Id, string Name, DateOnly On);

/// <summary>An address at which phones are let in, and with a code its square code: modules of a side with the white, and a path.</summary>
internal sealed record PhoneAddressDocument(string Address, int Side, string? Path);

/// <summary>The phones, and the code by which another one is paired; null for none. Its time is in seconds.</summary>
internal sealed record PhonesDocument(
    string? Code,
    int Seconds,
    ImmutableArray<PhoneAddressDocument> Addresses,
    ImmutableArray<PhoneDocument> Phones
)
{
    /// <summary>The phones as they are.</summary>
    /// <param name="phones">The phones.</param>
    /// <param name="addresses">The addresses, each with a slash at its end.</param>
    public static PhonesDocument Of(PairedPhones phones, ImmutableArray<string> addresses)
    {
        var code = phones.Code.Now;
        return new PhonesDocument(
            code,
            (int)Math.Ceiling(phones.Code.Left.TotalSeconds),
            [.. addresses.Select(address => Address(address, code))],
            [.. phones.All.Select(phone => new PhoneDocument(phone.Id, phone.Name, phone.On))]
        );
    }

    // What stands behind # stays in the phone: no request and no list of requests has it.
    private static PhoneAddressDocument Address(string address, string? code)
    {
        if (code is null)
        {
            return new PhoneAddressDocument(address, 0, null);
        }

        var square = QrRuns.Of($"{address}#{code}");
        var path = new StringBuilder();
        foreach (var run in square.Dark)
        {
            path.Append(
                CultureInfo.InvariantCulture,
                $"M{run.Column + QrRuns.Quiet} {run.Row + QrRuns.Quiet}h{run.Length}v1h-{run.Length}z"
            );
        }

        return new PhoneAddressDocument(address, square.Side + (2 * QrRuns.Quiet), path.ToString());
    }
}
