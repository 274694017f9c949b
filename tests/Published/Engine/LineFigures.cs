namespace Published.Engine;

/// <summary>What one replication of a line gave: means over time, by station where there are several.</summary>
internal sealed record LineFigures(double Throughput, double InSystem, double[] Blocked, double[] Held, double[] Full, double Lost);
