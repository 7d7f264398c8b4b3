namespace Tendency.Breakdown.Weeks;

/// <summary>One <c>[[leave_out]]</c> of the week file.</summary>
internal static class LeaveOutTable
{
    /// <returns>The rule; null when it has no valid condition, for then it would leave nothing out, or when one of its conditions is not valid, for then it would leave too much out.</returns>
    public static LeaveOut? Read(WeekTable table, KnownNames names)
    {
        var why = table.Text("why");
        var game = table.Text("game");
        var quarter = table.Whole("quarter", 1, 5);
        var margin = table.Whole("margin_beyond", 0, 200);
        var values = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        var keys = table.Keys.Distinct(StringComparer.Ordinal).ToArray();
        foreach (var name in names.Dimensions.Where(name => name is not ("game" or "quarter") && keys.Contains(name, StringComparer.Ordinal)))
        {
            if (table.Texts(name) is { Count: > 0 } wanted)
            {
                values.Add(name, wanted);
            }
        }

        table.ReportUnknown(names.Dimensions);
        var said = keys.Count(key => key != "why");
        var valid = values.Count + (game is null ? 0 : 1) + (quarter is null ? 0 : 1) + (margin is null ? 0 : 1);
        if (said == 0)
        {
            table.Report(WeekRules.MissingKey, "", "", "This [[leave_out]] entry has no condition; it leaves nothing out.", "margin_beyond = 24");
        }
        else if (valid < said)
        {
            table.Report(WeekRules.MissingKey, "", "", "A condition of this [[leave_out]] entry is not valid; the entry leaves nothing out until it is corrected.");
        }

        return valid == 0 || valid < said ? null : new LeaveOut(why ?? Reason(game, quarter, margin, values)) { Game = game ?? "", Quarter = quarter, MarginBeyond = margin, Values = values };
    }

    // Without a reason of the staff's the conditions speak for themselves.
    private static string Reason(string? game, int? quarter, int? margin, Dictionary<string, IReadOnlyList<string>> values) => string.Join(
        " and ",
        [
            .. game is null ? Array.Empty<string>() : [$"game {game}"],
            .. quarter is null ? Array.Empty<string>() : [$"quarter {quarter}"],
            .. margin is null ? Array.Empty<string>() : [$"margin beyond {margin}"],
            .. values.Select(pair => $"{pair.Key} {string.Join(" or ", pair.Value)}"),
        ]);
}
