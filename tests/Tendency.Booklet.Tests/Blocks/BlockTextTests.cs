using Tendency.Booklet.Blocks;
using Tendency.Booklet.Tests.Demo;
using Tendency.Booklet.Tests.Infra;

namespace Tendency.Booklet.Tests.Blocks;

public sealed class BlockTextTests
{
    [Fact]
    public void Of_EveryBlock_ReadsAsText() => Golden.Check("Blocks", "every-block", BlockText.Of(DemoBooklet.Make()));
}
