using Support;

namespace Rooms;

/// <summary>The folders inside a project are rooms, and use each other one way.</summary>
public sealed class CircleTests
{
    public static TheoryData<string> Projects =>
        [
            .. Directory
                .EnumerateDirectories(Path.Combine(Repository.Root, "src"))
                .Select(folder => Path.GetFileName(folder))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Projects))]
    public void Folders_of_a_project_use_each_other_one_way(string project)
    {
        var map = RoomMap.Of(project);
        string[][] circles = [.. map.Circles()];
        Assert.True(
            circles.Length == 0,
            "Rooms use each other in a circle: "
                + string.Join('\n', circles.SelectMany(circle => map.Arrows(circle).Prepend(string.Join(", ", circle))))
        );
    }

    [Fact]
    public void A_circle_is_found_with_the_arrows_that_make_it()
    {
        var map = new RoomMap([
            SourceFile.Read("Low.cs", "namespace House.Low;\nclass Brick { }\n")!,
            SourceFile.Read(
                "A.cs",
                "using House.Low;\nusing House.B;\nnamespace House.A;\nclass Door { Brick b; void Open(Window w) { } }\n"
            )!,
            SourceFile.Read("B.cs", "namespace House.B;\n// A.Door\nclass Window { string a = \"A.Door\"; }\n")!,
            SourceFile.Read("C.cs", "namespace House.B;\nclass Pane { A.Door door; }\n")!,
        ]);
        var circle = Assert.Single(map.Circles());
        Assert.Equal("House.A, House.B", string.Join(", ", circle));
        Assert.Equal("House.A -> House.B: Window in A.cs; House.B -> House.A: Door in C.cs", string.Join("; ", map.Arrows(circle)));
    }

    [Fact]
    public void A_room_that_is_named_in_remarks_and_texts_alone_is_not_used()
    {
        var map = new RoomMap([
            SourceFile.Read("A.cs", "using House.B;\nnamespace House.A;\nclass Door { void Open(Window w) { } }\n")!,
            SourceFile.Read(
                "B.cs",
                "using House.A;\nnamespace House.B;\n/// A <see cref=\"Door\"/>.\nclass Window { string a = \"Door\"; }\n"
            )!,
        ]);
        Assert.Empty(map.Circles());
    }

    [Fact]
    public void An_extension_method_and_the_folder_around_are_uses_too()
    {
        var map = new RoomMap([
            SourceFile.Read("A.cs", "namespace House.A;\nstatic class Words { public static string Said(this int of) => Roof.Name; }\n")!,
            SourceFile.Read("Roof.cs", "using House.A;\nnamespace House;\nclass Roof { string s = $\"{3.Said()}\"; }\n")!,
        ]);
        Assert.Equal("House, House.A", string.Join(", ", Assert.Single(map.Circles())));
    }
}
