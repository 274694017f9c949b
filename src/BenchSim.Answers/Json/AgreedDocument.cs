using BenchSim.Report.Json;
using BenchSim.Season.Inputs;
using BenchSim.Study.Agreed;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Json;

/// <summary>What was agreed and kept.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="On">The day.</param>
/// <param name="Bill">The rule for the bill: "equal", "tray-days" or "full-weeks".</param>
/// <param name="Sowings">Sowings of the plan.</param>
/// <param name="Folder">The folder that keeps the files of the plan.</param>
internal sealed record AgreedDocument(int Version, string Name, DateOnly On, string Bill, int Sowings, string Folder)
{
    public static AgreedDocument Of(SeasonPlan plan, DateOnly on, BillRule rule, string folder) =>
        new(JsonDialect.Version, plan.Scenario.Name, on, rule.Word(), plan.Batches.Length, folder);
}

/// <summary>How far a plan is still the one that was agreed.</summary>
/// <param name="On">The day of the latest agreement.</param>
/// <param name="Bill">The rule for the bill: "equal", "tray-days" or "full-weeks".</param>
/// <param name="Changed">Sowings planned otherwise now; null, with the next two, where the agreed plan cannot be read any more.</param>
/// <param name="New">Sowings that were not agreed.</param>
/// <param name="Gone">Sowings that are no longer planned.</param>
internal sealed record JsonAgreed(DateOnly On, string Bill, int? Changed, int? New, int? Gone)
{
    public static JsonAgreed Of(DateOnly on, BillRule rule, PlanChanges? changes) =>
        new(on, rule.Word(), changes?.Changed, changes?.New, changes?.Gone);
}
