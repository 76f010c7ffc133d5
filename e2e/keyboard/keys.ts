// The keyboard as the only hand: going to a thing by the tab key, as far as it takes.
import { expect, type Locator, type Page } from '@playwright/test';

/** Presses the tab key until the target has the focus; fails when it is not reached, or when its focus is not to be seen. */
export async function tabTo(page: Page, target: Locator, most = 400): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    await page.keyboard.press('Tab');
    if (await target.evaluate((element) => element === document.activeElement)) {
      const { style, width } = await target.evaluate((element) => {
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        return { style: outlineStyle, width: Number.parseFloat(outlineWidth) };
      });
      expect(style, 'the focus is drawn').not.toBe('none');
      expect(width, 'the focus is drawn').toBeGreaterThanOrEqual(1);
      return;
    }
  }
  throw new Error(`Not reached by ${most} presses of the tab key: ${target}`);
}
