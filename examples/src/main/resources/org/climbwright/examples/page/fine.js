// Paper is finer than a screen: the plots are drawn at least twice as fine as a screen may be. Comes before the plots.
if (devicePixelRatio < 2) Object.defineProperty(window, 'devicePixelRatio', { value: 2 });
