namespace EndToEnd.Cluster;

/// <summary>A test that needs Slurm's own programs; where they are not, it is skipped, and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ClusterFactAttribute : FactAttribute
{
    public ClusterFactAttribute()
    {
        if (SlurmCluster.Missing is { } program)
        {
            Skip = $"This test needs {program} (Debian: slurm-wlm and munge).";
        }
    }
}
