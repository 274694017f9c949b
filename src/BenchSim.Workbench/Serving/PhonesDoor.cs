using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Phones;
using BenchSim.Workbench.Showing;
using Microsoft.AspNetCore.Http;

namespace BenchSim.Workbench.Serving;

/// <summary>What the owner's page asks of the phones: who is paired, a new code, and one taken away.</summary>
internal static class PhonesDoor
{
    private static readonly NotMade s_off = new("No phone is let in. Open the workbench with --lan.", false);

    /// <summary>Answers which phones are paired, at which addresses, and by which code another one is.</summary>
    public static Task AnswerAsync(HttpContext context, OpenDesk open) =>
        open is { Phones: { } phones }
            ? JsonBody.SayAsync(context, PhonesDocument.Of(phones, open.PhoneAddresses), PageContext.Default.PhonesDocument)
            : Gate.RefuseAsync(context, StatusCodes.Status404NotFound, s_off.Why);

    /// <summary>Makes a new code.</summary>
    public static NotMade? NewCode(OpenDesk open)
    {
        open.Phones?.NewCode();
        return open.Phones is null ? s_off : null;
    }

    /// <summary>Takes a phone away.</summary>
    public static NotMade? Remove(OpenDesk open, PhoneRequest asked) => open.Phones is { } phones ? phones.Remove(asked.Id) : s_off;
}
