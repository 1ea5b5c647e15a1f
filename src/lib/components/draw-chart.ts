import {
  BarController,
  BarElement,
  CategoryScale,
  Chart,
  Legend,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  Tooltip,
  type ChartConfiguration,
} from 'chart.js';
import type { Ink } from './ink';

Chart.register(
  BarController,
  BarElement,
  CategoryScale,
  Legend,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  Tooltip,
);

/** Draws a chart in the ink of the page. Loaded only when a chart comes into the page, as the library is large. */
export function drawChart(canvas: HTMLCanvasElement, config: ChartConfiguration, ink: Ink): Chart {
  Chart.defaults.color = ink.text;
  Chart.defaults.borderColor = ink.line;
  Chart.defaults.font = { ...Chart.defaults.font, family: ink.font, size: 13 };
  return new Chart(canvas, {
    ...config,
    options: { animation: false, responsive: true, maintainAspectRatio: false, ...config.options },
  });
}
