import { common, from, list } from './build.ts';

const said = from(common);

export const weather = list('weather', 'Weather', [
  said('clear', 'clr|fair|fine', 'Hardly a cloud.'),
  said('sunny', 'sun', 'With sunshine.'),
  said('cloudy', 'cldy|clouds|partly cloudy', 'With clouds.'),
  said('overcast', 'ovc|dull', 'Wholly clouded.'),
  said('rain', 'rainy|raining|wet', 'With rain.'),
  said('drizzle', 'light rain', 'With light rain.'),
  said('showers', 'shower', 'With rain off and on.'),
  said('heavy rain', 'downpour', 'With much rain.'),
  said('snow', 'snowing|flurries|snowy', 'With snow.'),
  said('freezing rain', 'ice storm', 'With rain that freezes.'),
  said('sleet', 'hail', 'With frozen rain.'),
  said('fog', 'foggy|mist', 'With fog.'),
  said('wind', 'windy|breezy', 'With wind.'),
  said('thunderstorm', 'storm|lightning|thunder', 'With lightning: masts come down and crews stand clear.'),
  said('frost', 'freezing', 'Below the freezing point.'),
  said('hot', 'heat', 'Hot.'),
  said('cold', '', 'Cold.'),
]);
