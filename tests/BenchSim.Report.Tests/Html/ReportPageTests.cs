using System.Xml;
using System.Xml.Linq;
using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Html;

public class ReportPageTests
{
    private static readonly ReportInput[] s_inputs = [new("site.toml", new byte[] { 1 })];

    [Fact]
    public void The_page_is_as_approved() =>
        Approval.Check("report.html", System.Text.Encoding.UTF8.GetBytes(ReportPage.Write(SyntheticStudy.Tiny(), s_inputs, "part 1 of 3")));

    [Fact]
    public void The_page_stands_alone()
    {
        var page = Page(SyntheticStudy.Spring());

        Assert.Empty(page.Descendants("script"));
        Assert.Empty(page.Descendants("link"));
        Assert.Empty(page.Descendants("img"));
        Assert.DoesNotContain("http", string.Concat(page.Descendants("style").Select(style => style.Value)), StringComparison.Ordinal);
        Assert.All(page.Descendants("a"), link =>
            Assert.Matches("^(#|tables/|charts/|result\\.json)", (string?)link.Attribute("href") ?? "")
        );
    }

    [Fact]
    public void The_page_has_its_landmarks_and_headings_in_order()
    {
        var page = Page(SyntheticStudy.Spring());

        Assert.Equal("en", (string?)page.Root!.Attribute("lang"));
        Assert.Single(page.Descendants("main"));
        Assert.Single(page.Descendants("header"));
        Assert.Single(page.Descendants("nav"));
        Assert.Single(page.Descendants("footer"));
        Assert.Single(page.Descendants("h1"));
        var level = 1;
        foreach (var next in page.Descendants().Where(IsHeading).Select(heading => heading.Name.LocalName[1] - '0'))
        {
            Assert.True(next <= level + 1, $"h{next} follows h{level}");
            level = next;
        }
    }

    [Fact]
    public void Every_section_is_in_the_contents_and_every_target_exists_once()
    {
        var page = Page(SyntheticStudy.Spring());

        string[] ids = [.. page.Descendants().Select(element => (string?)element.Attribute("id")).OfType<string>()];
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        string[] sections = [.. page.Descendants("section").Select(section => "#" + section.Attribute("id")!.Value)];
        string[] links = [.. page.Descendants("nav").Descendants("a").Select(link => link.Attribute("href")!.Value)];
        Assert.Equal(sections, links);
        Assert.All(page.Descendants().Attributes("aria-labelledby"), label => Assert.Contains(label.Value, ids, StringComparer.Ordinal));
    }

    [Fact]
    public void The_page_goes_from_the_verdict_by_the_spaces_and_batches_to_the_cautions() =>
        Assert.Equal(
            "verdict, glance, decides, spaces, shortage, waits, batches, growers, fuel, work, basis, cautions, files",
            string.Join(", ", Page(SyntheticStudy.Spring()).Descendants("section").Select(section => section.Attribute("id")!.Value))
        );

    [Fact]
    public void Every_chart_says_what_it_shows_and_has_a_reading_and_a_table()
    {
        var page = Page(SyntheticStudy.Spring());

        XElement[] charts =
        [
            .. page.Descendants("svg")
                .Where(svg => ((string?)svg.Attribute("class") ?? "").Split(' ').Contains("chart", StringComparer.Ordinal)),
        ];
        Assert.Equal(4 + 4, charts.Length);
        Assert.All(charts, chart =>
        {
            var figure = chart.Ancestors("figure").Single();
            Assert.False(string.IsNullOrWhiteSpace((string?)chart.Attribute("aria-label")));
            Assert.Equal("img", (string?)chart.Attribute("role"));
            Assert.NotEmpty(figure.Element("figcaption")!.Element("p")!.Value);
            Assert.NotEmpty(figure.Elements("details").Single().Descendants("table"));
        });
    }

    [Fact]
    public void Every_row_of_a_table_has_as_many_cells_as_its_head()
    {
        foreach (var table in Page(SyntheticStudy.Spring()).Descendants("table"))
        {
            var columns = table.Element("thead")!.Descendants("th").Count();
            Assert.All(table.Element("tbody")!.Elements("tr"), row => Assert.Equal(columns, row.Elements().Count()));
        }
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("' onfocus='alert(1)")]
    [InlineData("</style><img src=x onerror=alert(1)>")]
    [InlineData("&lt;script&gt;")]
    [InlineData("]]><!-- -->")]
    [InlineData("=cmd|' /C calc'!A0")]
    [InlineData("🍅🍆 tomato")]
    [InlineData("\u202Eevil\u202C")]
    [InlineData("two\r\nlines\u2028three\0four\u001B[31m")]
    [InlineData("half \uD83D a pair \uFFFF")]
    public void Hostile_names_stay_text(string name)
    {
        var plain = Page(Named("name"));
        var page = Page(Named(name));

        Assert.Equal(Shape(plain), Shape(page));
        Assert.DoesNotContain("\u202E", page.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("\u001B", page.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Long_names_are_shortened_in_charts_and_whole_in_the_heading_of_their_row()
    {
        string name = new('W', 300);
        var page = Page(Named(name));

        Assert.All(page.Descendants("svg").Descendants("text"), text => Assert.True(text.Value.Length <= 62));
        Assert.Contains(page.Descendants("bdi"), element => (string?)element.Attribute("title") == name);
    }

    [Fact]
    public void Values_from_memory_or_assumption_are_listed()
    {
        var basis = Page(SyntheticStudy.Spring()).Descendants("section").Single(section => (string?)section.Attribute("id") == "basis");
        var weak = basis.Elements("details").First();
        string[] rows =
        [
            .. weak.Descendants("tbody").Elements("tr").Select(row => string.Join(" | ", row.Elements().Select(cell => cell.Value))),
        ];

        // Six crops with two weak values each, one weak value of the tray, one of the house.
        Assert.Contains("14 values rest on memory or assumption", basis.Value, StringComparison.Ordinal);
        Assert.Equal(
            [
                "air_changes | from memory | Main house (0 an hour) | recalled, a tight house",
                "growth_cv | assumption | Cabbage (0.1), Eggplant (0.1), Lettuce (0.1), Onion (0.1), Pepper (0.1), Tomato (0.1) | no "
                    + "published spread found",
                "hold_days | from memory | Cabbage (7), Eggplant (7), Lettuce (7), Onion (7), Pepper (7), Tomato (7) | recalled, "
                    + "not verified",
                "medium_litres | from memory | 72-cell tray (3.4 litres) | recalled; makers differ up to 1.7 times",
            ],
            rows
        );
    }

    [Fact]
    public void Cautions_defer_to_codes_and_licensed_practice()
    {
        var cautions = Page(SyntheticStudy.Tiny())
            .Descendants("section")
            .Single(section => (string?)section.Attribute("id") == "cautions")
            .Value;

        foreach (var word in new[] { "near water", "licensed", "Local codes", "snow and wind" })
        {
            Assert.Contains(word, cautions, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void An_empty_plan_still_makes_a_page()
    {
        var result = SyntheticStudy.Tiny() with { Batches = [], Growers = [], Groups = [] };

        Assert.NotNull(Page(result).Root);
    }

    private static XDocument Page(StudyResult result)
    {
        using var reader = XmlReader.Create(
            new StringReader(ReportPage.Write(result, s_inputs, null)),
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
        );
        return XDocument.Load(reader);
    }

    /// <summary>The names of elements and attributes in order: what a name must not change. Whether a name is shortened may.</summary>
    private static string[] Shape(XDocument page) =>
        [
            .. page.Descendants()
                .Select(element =>
                    element.Name.LocalName
                    + string.Concat(
                        element.Attributes().Where(attribute => element.Name != "bdi").Select(attribute => " " + attribute.Name.LocalName)
                    )
                ),
        ];

    private static bool IsHeading(XElement element) => element.Name.LocalName is ['h', >= '1' and <= '6'];

    private static House RenameHouse(House house, string name) =>
        house with
        {
            Name = name,
            Body = house.Body is null
                ? null
                : house.Body with
                {
                    Covering = name,
                    Sources = SyntheticPlan.Sources(("covering", Trust.Memory, name)),
                },
        };

    private static StudyResult Named(string name)
    {
        var result = SyntheticStudy.Tiny();
        var provenance = SyntheticPlan.Sources(("growth_cv", Trust.Memory, name), ("tray", Trust.Seen, name));
        BatchResult Rename(BatchResult batch) =>
            batch with
            {
                Plan = batch.Plan with
                {
                    Order = batch.Plan.Order with { Id = name, Grower = name },
                    Crop = batch.Plan.Crop with { Name = name },
                },
            };
        return result with
        {
            Batches = [.. result.Batches.Select(Rename)],
            Growers = [.. result.Growers.Select(grower => grower with { Grower = name })],
            Houses = [.. result.Houses.Select(house => house with { House = RenameHouse(house.House, name) })],
            Spaces = [.. result.Spaces.Select(space => space with { Space = space.Space with { Name = name, Id = name } })],
            Plan = result.Plan with
            {
                Scenario = result.Plan.Scenario with
                {
                    Name = name,
                    Question = name,
                    Crops = [.. result.Plan.Scenario.Crops.Select(crop => crop with { Name = name, TrayId = name, Sources = provenance })],
                    Weather = SyntheticHeat.Weather(name, 4, name),
                    Houses = [.. result.Plan.Scenario.Houses.Select(house => RenameHouse(house, name))],
                    Spaces = [.. result.Plan.Scenario.Spaces.Select(space => space with { Name = name })],
                    Rules = result.Plan.Scenario.Rules with { Prices = new Prices { Currency = name } },
                },
                Warnings = [new Fault(new SourcePlace(name, 1, 1), name, name)],
            },
        };
    }
}
