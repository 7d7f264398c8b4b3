using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Problems;

namespace Tendency.Input;

/// <summary>The fronts in our plan, out of the built-in book and the staff's own files.</summary>
/// <param name="Book">All fronts, schemes and ratings.</param>
/// <param name="Fronts">The plan's fronts in its order; all of them without a plan.</param>
/// <param name="Problems">What is wrong in the staff's files or names.</param>
internal sealed record FrontPlan(FrontBook Book, IReadOnlyList<Front> Fronts, IReadOnlyList<Problem> Problems)
{
    public static FrontPlan Open(WeekFolder folder)
    {
        using var fronts = Reader(folder, folder.Plan.FrontsFile);
        using var ratings = Reader(folder, folder.Plan.RatingsFile);
        var read = FrontBookReader.Read(fronts, ratings, FrontBook.BuiltIn, folder.Plan.FrontsFile, folder.Plan.RatingsFile);
        var (planned, unknown) = read.Book.Plan(folder.Plan.Fronts);
        var problems = read.Problems.Concat(unknown.Select(name => Unknown(read.Book, name, folder.Plan.FrontsLine)));
        return new FrontPlan(read.Book, planned.Count > 0 ? planned : read.Book.Fronts, [.. problems]);
    }

    private static StreamReader? Reader(WeekFolder folder, string name) =>
        folder.OpenBeside(name) is { } stream ? new StreamReader(stream) : null;

    private static Problem Unknown(FrontBook book, string name, int line)
    {
        var nearest = NearestWord.In(book.Fronts.Select(f => f.Name), name);
        return new Problem(
            FrontRules.UnknownPlanFront,
            new Place("week.toml", line, "plan.fronts"),
            name,
            $"'{name}' is no front that is known.{(nearest is null ? "" : $" Did you mean '{nearest}'?")}",
            nearest ?? "");
    }
}
