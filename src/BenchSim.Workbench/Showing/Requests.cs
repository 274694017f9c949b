using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BenchSim.Answers.Laying;
using BenchSim.Season.Values;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Showing;

/// <summary>Changes that the page asks for.</summary>
/// <param name="What">What is changed, in a few words.</param>
/// <param name="Changes">The changes.</param>
internal sealed record EditRequest(string What, ImmutableArray<Change> Changes) : IAsked
{
    bool IAsked.IsWhole => Changes.All(Change.IsWhole);
}

/// <summary>What the page asks for a try.</summary>
/// <param name="Id">Number of the try.</param>
/// <param name="Name">Its name, or that of the file in question.</param>
/// <param name="Mine">Whether the text of the try stands, where it and the file differ.</param>
internal sealed record TryRequest(int Id, string Name = "", bool Mine = false) : IAsked;

/// <summary>What is to be mended.</summary>
/// <param name="Goal">Share of seasons in which the plan must fit, percent.</param>
internal sealed record MendRequest(double Goal) : IAsked;

/// <summary>A list of what was found.</summary>
internal enum TakenFrom
{
    /// <summary>The changes chosen.</summary>
    Steps,

    /// <summary>Changes that help alone.</summary>
    Singles,

    /// <summary>Changes of the order.</summary>
    OfTheOrder,
}

/// <summary>What of all that was found is to be taken as a try.</summary>
/// <param name="Of">The list.</param>
/// <param name="At">Position in it, from 0; of the changes chosen those before it too.</param>
internal sealed record TakeRequest(TakenFrom Of, int At) : IAsked;

/// <summary>What is not to be had.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="IsHere">True to take the mark away.</param>
internal sealed record MarkRequest(string Mark, bool IsHere = false) : IAsked;

/// <summary>What the growers agreed on, beside the plan of the files.</summary>
/// <param name="Bill">Name of the rule for the bill.</param>
/// <param name="On">The day.</param>
/// <param name="Replace">Whether an agreement of the same day is replaced.</param>
internal sealed record AgreeRequest(string Bill, DateOnly On, bool Replace = false) : IAsked;

/// <summary>Lines for the log, or of those that were written what they are called.</summary>
/// <param name="Id">What they are called by whoever writes them, each time another name.</param>
internal sealed record LogRequest(string Id) : IAsked
{
    /// <summary>What was done, in a few words.</summary>
    public string Said { get; set; } = "";

    /// <summary>The cells of each line by column.</summary>
    public ImmutableArray<ImmutableSortedDictionary<string, string>> Rows { get; set; } = [];

    bool IAsked.IsWhole =>
        Said is not null && !Rows.IsDefault && Rows.All(row => row is not null && row.Values.All(value => value is not null));
}

/// <summary>What a phone sends to be paired.</summary>
/// <param name="Code">The code that was typed.</param>
/// <param name="Name">What its user calls it.</param>
internal sealed record PairRequest(string Code, string Name) : IAsked;

/// <summary>A phone that is to be taken away.</summary>
/// <param name="Id">By which the list names it.</param>
internal sealed record PhoneRequest(string Id) : IAsked;

/// <summary>What the page sends where nothing is to be said.</summary>
internal sealed record NothingRequest : IAsked;

/// <summary>What was answered to the ten questions.</summary>
internal sealed record FarmRequest : FarmAnswers, IAsked
{
    bool IAsked.IsWhole => Houses.IsDefaultOrEmpty || Houses.All(house => house is not null);
}

/// <summary>A starter that is to be laid down.</summary>
/// <param name="Name">Name of the folder.</param>
/// <param name="Farm">Word that asks for the starter.</param>
/// <param name="Climate">Word that asks for its climate.</param>
/// <param name="Units">Units that it is written in.</param>
/// <param name="Year">Year of its set-out dates.</param>
internal sealed record StarterRequest(string Name, string Farm, string Climate, UnitSystem Units, int Year) : IAsked;

/// <summary>Why something was not done.</summary>
/// <param name="Why">In a sentence.</param>
/// <param name="IsConflict">Whether something else stands there than was seen.</param>
internal sealed record RefusalDocument(string Why, bool IsConflict);

/// <summary>The JSON of the page, made when the program is compiled.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true
)]
[JsonSerializable(typeof(EditRequest))]
[JsonSerializable(typeof(TryRequest))]
[JsonSerializable(typeof(NothingRequest))]
[JsonSerializable(typeof(FarmRequest))]
[JsonSerializable(typeof(StarterRequest))]
[JsonSerializable(typeof(StartersDocument))]
[JsonSerializable(typeof(RefusalDocument))]
[JsonSerializable(typeof(DeskDocument))]
[JsonSerializable(typeof(AnswerDocument))]
[JsonSerializable(typeof(WhyDocument))]
[JsonSerializable(typeof(PapersDocument))]
[JsonSerializable(typeof(MendDocument))]
[JsonSerializable(typeof(SearchProgress))]
[JsonSerializable(typeof(TrustDocument))]
[JsonSerializable(typeof(MendRequest))]
[JsonSerializable(typeof(TakeRequest))]
[JsonSerializable(typeof(MarkRequest))]
[JsonSerializable(typeof(AgreeRequest))]
[JsonSerializable(typeof(AgreementDocument))]
[JsonSerializable(typeof(ToldDocument))]
[JsonSerializable(typeof(LogRequest))]
[JsonSerializable(typeof(BenchesDocument))]
[JsonSerializable(typeof(ComingDocument))]
[JsonSerializable(typeof(PairRequest))]
[JsonSerializable(typeof(PhoneRequest))]
[JsonSerializable(typeof(PhonesDocument))]
[JsonSerializable(typeof(ImmutableArray<FieldsDocument>), TypeInfoPropertyName = "Fields")]
internal sealed partial class PageContext : JsonSerializerContext;
