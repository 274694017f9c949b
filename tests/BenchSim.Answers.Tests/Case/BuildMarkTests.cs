using System.Reflection;
using BenchSim.Answers.Case;
using BenchSim.Folder;
using BenchSim.Season.Play;
using BenchSim.Study;

namespace BenchSim.Answers.Tests.Case;

public class BuildMarkTests
{
    // A commit in the version would go into the mark: shards of a study played before and after a commit that changes no source could not
    // be joined.
    [Theory]
    [InlineData(typeof(Engine.Clock))]
    [InlineData(typeof(SeasonResult))]
    [InlineData(typeof(StudyRunner))]
    [InlineData(typeof(ScenarioFolder))]
    public void The_rooms_that_the_mark_stands_for_do_not_tell_the_commit(Type room) =>
        Assert.DoesNotContain('+', room.Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion);

    [Fact]
    public void The_mark_is_sixteen_characters() => Assert.Matches("^[0-9a-f]{16}$", BuildMark.Text);
}
