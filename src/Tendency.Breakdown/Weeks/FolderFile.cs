namespace Tendency.Breakdown.Weeks;

/// <summary>Names of files as a week file may write them: in its own folder or below.</summary>
internal static class FolderFile
{
    /// <summary>Why a name is refused, to follow "which"; null when it stays in the folder. Whether it is a link that leads out is the opener's to see.</summary>
    public static string? Refusal(string name)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            return "is empty";
        }

        if (name.Any(char.IsControl) || name.Length > 255)
        {
            return "is no file name";
        }

        var parts = name.Split('/', '\\');
        if (parts[0].Length == 0 || name.Contains(':', StringComparison.Ordinal) || parts[0] == "~")
        {
            return "leads out of the week's folder";
        }

        return parts.Any(part => part.Trim() is "..") ? "leads out of the week's folder"
            : parts.Any(part => part.Trim().Length == 0) ? "is no file name"
            : null;
    }
}
