using Wainwright.Web;

return await Shop.Run(args);
