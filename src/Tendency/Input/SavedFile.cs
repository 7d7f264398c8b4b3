using Tendency.Booklet.Pages;
using Tendency.Breakdown.Findings.Reviews;
using Tendency.Files;

namespace Tendency.Input;

/// <summary>The findings a booklet writes beside itself.</summary>
internal static class SavedFile
{
    private const string Ending = ".findings.json";

    /// <summary>"port-halden.pdf" has its findings in "port-halden.findings.json".</summary>
    public static string Beside(string booklet) => Path.ChangeExtension(booklet, Ending);

    public static void Write(SavedFindings findings, string booklet) => OutputFile.Write(Beside(booklet), SavedFindingsFile.Write(findings));

    public static SavedFindings Read(string path)
    {
        if (!File.Exists(path))
        {
            throw new CommandException($"{path}: no such file.");
        }

        return SavedFindingsFile.Read(File.ReadAllText(path), out var problem)
            ?? throw new CommandException($"{path}: these are no findings a booklet saved ({problem}).");
    }

    public static SavedFindings Of(Study study) => SavedFindings.Of(
        study.Chosen,
        study.Tells,
        [.. study.Fronts?.Ranking.Ranks.Select(r => new SavedFront(r.Front, r.SuccessAllowed, r.Low, r.High)) ?? []],
        study.ChartedTo,
        study.Level);
}
