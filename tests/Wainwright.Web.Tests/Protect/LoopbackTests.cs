using Wainwright.Web.Protect;

namespace Wainwright.Web.Tests.Protect;

public sealed class LoopbackTests
{
    [Theory]
    [InlineData("http://127.0.0.1:5080")]
    [InlineData("http://localhost:0;http://[::1]:5081")]
    public void This_machine_may_be_served(string urls) => Loopback.Only(urls);

    [Theory]
    [InlineData("http://0.0.0.0:5080")]
    [InlineData("http://*:5080")]
    [InlineData("http://+:80")]
    [InlineData("http://192.168.1.5:5080")]
    [InlineData("http://127.0.0.1:5080;http://workshop.example:80")]
    public void An_address_open_to_others_is_refused(string urls) => Assert.Throws<SettingException>(() => Loopback.Only(urls));
}
