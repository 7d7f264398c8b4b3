namespace Tendency.Breakdown.Charts.Reading;

/// <summary>A chart to read: its name and a way to open its bytes. Opening is the command's business, so that libraries touch no files.</summary>
public sealed record ChartSource(string Name, Func<Stream> Open);
