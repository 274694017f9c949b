using Support;

namespace Rooms;

/// <summary>The pages people read have one width. With BENCHSIM_APPROVE=1 they are broken anew.</summary>
public sealed class PageTests
{
    private const int Width = 140;

    public static TheoryData<string> Pages => [.. All];

    /// <summary>The pages, by their paths in the repository.</summary>
    internal static string[] All => ["README.md", "DEVELOPERS.md", .. Under("docs"), .. Under("scenarios")];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Prose_is_broken_at_one_width(string page)
    {
        var wrapped = PageWrap.Wrap(Sources.Text(page).ReplaceLineEndings("\n"), Width);
        Assert.Equal(wrapped.Split('\n'), Approved.Text(page, wrapped).ReplaceLineEndings("\n").Split('\n'));
    }

    [Fact]
    public void Words_are_broken_and_all_else_stays()
    {
        const string Page = """
            # A heading that is longer than the width of the page

            One two three four
            five six `a b c d e f` seventeen - eighteen.

            - An item that goes on
            and on
              - and one below it that does so too

            1. First of all
               and then

                   code in an item that is long enough

            | a | table | that | is | wider | than | it |

                code that is longer than the width of the page
            """;
        const string Wrapped = """
            # A heading that is longer than the width of the page

            One two three
            four five six
            `a b c d e f`
            seventeen -
            eighteen.

            - An item that
              goes on and
              on
              - and one
                below it
                that does
                so too

            1. First of all
               and then

                   code in an item that is long enough

            | a | table | that | is | wider | than | it |

                code that is longer than the width of the page
            """;
        Assert.Equal(Wrapped.ReplaceLineEndings("\n"), PageWrap.Wrap(Page.ReplaceLineEndings("\n"), 15));
    }

    private static IEnumerable<string> Under(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Root, folder), "*.md", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
}
