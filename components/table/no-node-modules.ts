// What Node's own modules are to a browser: nothing. HarfBuzz names some for when it runs on a server.
export {};
